import { structuralCaution } from '../../../core/documents/cautions.ts';
import { Banner } from '../../kit/banner.tsx';

/** What stands beside every structural figure: the same words as on the sheets. */
export function Caution() {
  return <Banner tone="caution">{structuralCaution.replaceAll('on this sheet', 'here')}</Banner>;
}
