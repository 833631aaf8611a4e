/** Prices as they stand in a tray: whole euro without their cents. */
import { showMoney, showNumber } from '../../units/money.ts';

/** "€74", "€74.50". */
export const showEuro = (cents: number): string =>
  cents % 100 === 0 ? `${cents < 0 ? '−' : ''}€${showNumber(Math.abs(cents) / 100)}` : showMoney(cents);
