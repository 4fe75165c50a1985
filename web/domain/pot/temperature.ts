import type { Conversion } from './conversion.ts';
import { twelveDigits } from './conversion.ts';

/** Celsius, Fahrenheit, Réaumur. */
export type TemperatureUnit = '°C' | '°F' | '°Ré';

const SOURCE = 'definitions of the scales: water freezes at 0 °C, 32 °F, 0 °Ré and boils at 100 °C, 212 °F, 80 °Ré';

/**
 * A temperature in °C. Temperatures are turned into other units and never scaled with the fibre.
 *
 * @source definitional: °C = (°F − 32) × 5/9 = °Ré × 1.25.
 */
export function toCelsius(value: number, unit: TemperatureUnit): Conversion {
  if (unit === '°F') return { value: twelveDigits(((value - 32) * 5) / 9), unit: '°C', sum: `(${value} − 32) × 5/9`, source: SOURCE };
  if (unit === '°Ré') return { value: twelveDigits(value * 1.25), unit: '°C', factor: 1.25, source: SOURCE };
  return { value, unit: '°C', factor: 1, source: SOURCE };
}

/** A temperature in °C, in another unit. */
export function fromCelsius(celsius: number, unit: TemperatureUnit): Conversion {
  if (unit === '°F') return { value: twelveDigits((celsius * 9) / 5 + 32), unit, sum: `${celsius} × 9/5 + 32`, source: SOURCE };
  if (unit === '°Ré') return { value: twelveDigits(celsius * 0.8), unit, factor: 0.8, source: SOURCE };
  return { value: celsius, unit, factor: 1, source: SOURCE };
}

/** The scale a written sign means: `C`, `°F`, `°R`, `Ré`, `Reaumur`; undefined for another. */
export function temperatureUnit(written: string): TemperatureUnit | undefined {
  const sign = written.trim().replace(/^(?:°|º|deg(?:rees?)?\.?)\s*/iu, '');
  if (/^(?:c|celsius|centigrade)$/iu.test(sign)) return '°C';
  if (/^(?:f|fahrenheit)$/iu.test(sign)) return '°F';
  return /^(?:r|r[eé]|r[eé]aum[uü]r)$/iu.test(sign) ? '°Ré' : undefined;
}
