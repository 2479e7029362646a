// What all that pays is worth, by price of electricity and discount rate: the measures in turn are chosen anew in each cell.

import { type ReactNode, useId } from 'react';
import { sayYears, type WrappingAnswer } from '../../assess/index.ts';
import { sayQuantity, type UnitView } from '../../quantities/index.ts';

interface PriceTableProps {
  readonly answer: WrappingAnswer;
  readonly view: UnitView;
}

export function PricesTable({ answer, view }: PriceTableProps): ReactNode {
  const { prices, currency, basis } = answer;
  const caption = useId();
  const context = { currency };
  const price = (value: number) => sayQuantity(value, 'energyPrice', view, 2, context);
  const rate = (value: number) => sayQuantity(value, 'fraction', view, 2);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls sideways must be reachable by keyboard
    <section className="table-scroll" tabIndex={0} aria-labelledby={caption}>
      <table className="data price-table">
        <caption id={caption}>
          Worth over {sayYears(basis.years)} of all that pays at those prices, less its cost, with a plain heater. House
          heat stays at {price(basis.houseHeatPrice)}. Likely values.
        </caption>
        <thead>
          <tr>
            <th scope="col">Electricity</th>
            {prices.discountRates.map((value, column) => (
              <th key={value} scope="col" className="number">
                {rate(value)} interest{column === prices.ownRate && <span className="own-mark"> (yours)</span>}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {prices.cells.map((cells, row) => (
            <tr key={prices.electricityPrices[row]}>
              <th scope="row">
                {price(prices.electricityPrices[row]!)}
                {row === prices.ownPrice && <span className="own-mark"> (yours)</span>}
              </th>
              {cells.map((cell, column) => {
                const isOwn = row === prices.ownPrice && column === prices.ownRate;
                const value = sayQuantity(cell.netValue, 'money', view, 2, context);
                return (
                  <td key={cell.discountRate} className={isOwn ? 'number own' : 'number'}>
                    {isOwn ? <strong>{value}</strong> : value}
                    <span className="bar-note">{countWords(cell.paying.length)}</span>
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function countWords(count: number): string {
  if (count === 0) return 'nothing pays';
  return count === 1 ? '1 measure pays' : `${count} measures pay`;
}
