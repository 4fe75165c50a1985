/** Units that stand close to their number and never on another line. */
const UNIT = /(\d|½|¼|¾) (°C|°F|°dH|%|g|kg|mg|L|l|mL|ml|h|min|cm|mm|m|nm|lb|oz)(?![\p{L}\d])/gu;

/** Words as they are set: a narrow space that does not break between a number and its unit. */
export const typeset = (text: string): string => text.replace(UNIT, '$1\u202F$2');
