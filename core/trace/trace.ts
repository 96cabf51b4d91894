/**
 * What a figure was made of, one step down. `ref`, where present, names the next figure, which `explain` opens in turn,
 * until a tape reading, a price of a day, or a setting is reached. Refs are plain text:
 *
 * `line/ID` a takeoff line · `cost/ID` a cost line · `total/KEY` a sum of the estimate · `piece/MARK` ·
 * `board/GROUP/N` a bought board · `section/EAVE/TAIL` how a tail was solved · `overhang/EAVE/TAIL` its own on a bowed
 * wall · `fit/EAVE/TAIL` its seat, shim or packer · `filler/EAVE/TAIL` · `header/EAVE/TAIL` · `fascia-line/EAVE` ·
 * `station/EAVE/RAFTER` or of a hung TAIL · `bay/EAVE/RAFTER` · `wall/EAVE/READING` and `plate/EAVE/READING` of its bow
 * and of the plate's height ·
 * `check/CHECK/EAVE` an advisory check · `reading/EAVE/RAFTER` · `eave/EAVE/FIELD` a survey entry of an eave · `rafter/EAVE/RAFTER/FIELD` one of a rafter ·
 * `rake/ID/...` a figure or an entry of a rake, as explain-rake.ts lists ·
 * `survey/FIELD` one of the whole house · `design/EAVE/FIELD` · `design/extraCosts/ID` an entered
 * cost · `design/onHand/ID` a board he has · `setting/PATH` · `price/ITEM` · `labour/TASK` a production rate. FIELD and PATH are dotted.
 */
export type TracePart = {
  readonly label: string;
  readonly value: string;
  readonly ref?: string;
};

/** One step of walking back: the figure, how it was computed, and its parts. */
export type Explanation = {
  readonly ref: string;
  readonly title: string;
  readonly value: string;
  /** In words, with the numbers in it. */
  readonly how: string;
  readonly parts: readonly TracePart[];
};
