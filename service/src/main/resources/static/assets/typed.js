// A quantity as people type it: "98", "98 mm", "4in", "3 7/8 in", "3/4". The unit may be any of the field's dimension.

import { parse } from './decimal.js';

const NAMES = new Map(Object.entries({ '"': 'in', '”': 'in', inch: 'in', inches: 'in', "'": 'ft', feet: 'ft', foot: 'ft', gram: 'g', grams: 'g', grain: 'gr', grains: 'gr', ml: 'mL', l: 'L', n: 'N', kpa: 'kPa', lbs: 'lb', 'cu in': 'in3', 'in³': 'in3' }));
const MOST = 6; // digits after the point

/** A fraction with digits that say it exactly enough: 7/8 is .875. */
function fraction(whole, over, under) {
  const value = Number(whole || 0) + Number(over) / Number(under);
  return String(Number(value.toFixed(MOST)));
}

/**
 * Splits it.
 *
 * @param units that the field takes
 * @returns value with a point and unit, or undefined for the field's own; null where it is no quantity of these units
 */
export function split(text, units) {
  const typed = text.trim();
  const mixed = /^(?:(\d+)(?:\s+|-))?(\d+)\/(\d+)\s*(.*)$/.exec(typed);
  const plain = /^(\d+[.,]?\d*|[.,]\d+)\s*(.*)$/.exec(typed);
  const found = mixed || plain;
  if (!found) return null;
  const word = found[found.length - 1].trim();
  const unit = word === '' ? undefined : known(word, units);
  if (unit === null) return null;
  if (mixed) return Number(mixed[3]) === 0 ? null : { value: fraction(mixed[1], mixed[2], mixed[3]), unit };
  const value = parse(plain[1]);
  return value === null ? null : { value, unit };
}

function known(word, units) {
  const name = NAMES.get(word) || NAMES.get(word.toLowerCase()) || word;
  return units.find((unit) => unit === name) || units.find((unit) => unit.toLowerCase() === name.toLowerCase()) || null;
}
