/**
 * Standard atomic weights, abridged to five digits, of the elements in dyers' salts.
 *
 * @source IUPAC Commission on Isotopic Abundances and Atomic Weights, abridged standard atomic weights (2021), from memory.
 */
export const ATOMIC_WEIGHTS: Readonly<Record<string, number>> = {
  H: 1.008,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  Na: 22.99,
  Mg: 24.305,
  Al: 26.982,
  Si: 28.085,
  P: 30.974,
  S: 32.06,
  Cl: 35.45,
  K: 39.098,
  Ca: 40.078,
  Cr: 51.996,
  Mn: 54.938,
  Fe: 55.845,
  Cu: 63.546,
  Zn: 65.38,
  Sn: 118.71,
};
