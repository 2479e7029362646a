// Starts the engine's worker: how depends on the form the workbench is built in, so the build gives it.

declare module 'virtual:engine-worker' {
  const startWorker: () => Worker;
  export default startWorker;
}
