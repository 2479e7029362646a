// Something the person should read: a file that cannot be used, a design the engine has no answer for.

import type { ReactNode } from 'react';
import type { Notice } from '../state/workbench.ts';

export function NoticeBox({ notice, close }: { notice: Notice; close?: () => void }): ReactNode {
  return (
    <div className="notice notice-stop" role="alert">
      <div>
        <p>
          <strong>{notice.title}</strong>
        </p>
        <ul>
          {notice.problems.map((problem) => (
            <li key={`${problem.path} ${problem.message}`}>{problem.message}</li>
          ))}
        </ul>
      </div>
      {close !== undefined && (
        <button type="button" className="plain" onClick={close}>
          Close
        </button>
      )}
    </div>
  );
}
