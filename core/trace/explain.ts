import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import {
  explainDesignEntry,
  explainEaveEntry,
  explainLabourRate,
  explainPrice,
  explainRafterEntry,
  explainReading,
  explainSetting,
  explainSurveyEntry,
} from './explain-entry.ts';
import { explainCheck } from './explain-check.ts';
import { explainCost, explainTotal } from './explain-money.ts';
import { explainRake } from './explain-rake.ts';
import { explainBay, explainStation } from './explain-station.ts';
import { explainFiller, explainFit, explainHeader, explainOverhang, explainSection } from './explain-tail.ts';
import { explainBoard, explainLine, explainPiece } from './explain-takeoff.ts';
import { explainFasciaLine, explainPlateReading, explainWallReading } from './explain-wall.ts';
import { splitRef } from './ref.ts';
import type { Explanation } from './trace.ts';

/**
 * Walks one step back from a figure: what it is, how it was computed, and what it was made of.
 * @param ref - as described at core/trace/trace.ts, e.g. `cost/labour-cut-extenders`.
 * @param input - what the job was computed from.
 * @param result - the computed job.
 * @returns the step; parts with a ref open the next one, and a figure without parts is a tape reading, an entry, a
 * price or a setting. Undefined where the ref names nothing of this job (it may have been changed since).
 */
export function explain(ref: string, input: JobInput, result: JobResult): Explanation | undefined {
  const { kind, rest } = splitRef(ref);
  switch (kind) {
    case 'line':
      return explainLine(rest, result);
    case 'cost':
      return explainCost(rest, result);
    case 'total':
      return explainTotal(rest, input, result);
    case 'piece':
      return explainPiece(rest, input, result);
    case 'board':
      return explainBoard(rest, input, result);
    case 'section':
      return explainSection(rest, input, result);
    case 'overhang':
      return explainOverhang(rest, input, result);
    case 'fit':
      return explainFit(rest, input, result);
    case 'filler':
      return explainFiller(rest, input, result);
    case 'header':
      return explainHeader(rest, input, result);
    case 'fascia-line':
      return explainFasciaLine(rest, input, result);
    case 'wall':
      return explainWallReading(rest, input);
    case 'plate':
      return explainPlateReading(rest, input);
    case 'station':
      return explainStation(rest, input, result);
    case 'bay':
      return explainBay(rest, input, result);
    case 'check':
      return explainCheck(rest, input, result);
    case 'reading':
      return explainReading(rest, input);
    case 'eave':
      return explainEaveEntry(rest, input);
    case 'rafter':
      return explainRafterEntry(rest, input);
    case 'survey':
      return explainSurveyEntry(rest, input);
    case 'design':
      return explainDesignEntry(rest, input);
    case 'rake':
      return explainRake(rest, input, result);
    case 'setting':
      return explainSetting(rest, input);
    case 'price':
      return explainPrice(rest, input);
    case 'labour':
      return explainLabourRate(rest, input);
    default:
      return undefined;
  }
}
