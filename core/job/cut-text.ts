import { formatLength } from '../units/format-length.ts';
import { inchesOf, type Sixteenths } from '../units/sixteenths.ts';

/** A cut length as a tape is read, e.g. 1064 -> `5' 6-1/2"`. [1/16 in] */
export function cutText(sixteenths: Sixteenths): string {
  return formatLength(inchesOf(sixteenths));
}
