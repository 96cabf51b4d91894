import { checkCaution, checkFootCaution } from '../../../core/documents/cautions.ts';
import { Banner } from '../../kit/banner.tsx';

/** What stands beside every figure of a check: the same words as on the calculation sheet, in full or as on its foot. */
export function CheckCaution(props: { readonly length: 'full' | 'short' }) {
  return <Banner tone="caution">{props.length === 'full' ? checkCaution : checkFootCaution}</Banner>;
}
