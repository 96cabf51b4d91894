import type { ShopSettings } from '../../../core/pricing/shop-settings.ts';
import { Panel } from '../../kit/panel.tsx';
import { Switch } from '../../kit/switch.tsx';
import { changeSettings } from './settings-store.ts';

const yardLengthsFt = [8, 10, 12, 14, 16, 18, 20, 22, 24] as const;

/** Lengths that the cut plan leaves out because the shop cannot carry them or the yard lacks them. */
export function ExcludedLengths({ settings }: { readonly settings: ShopSettings }) {
  const excluded = settings.cutting.excludedLengthsFt;
  const lengths = [...new Set([...yardLengthsFt, ...excluded])].sort((a, b) => a - b);
  return (
    <Panel title="Lengths that you buy">
      <p className="panel-note">The cut plan uses a length only where it is on here and on the price list.</p>
      <div className="length-switches">
        {lengths.map((length) => (
          <Switch
            key={length}
            isSelected={!excluded.includes(length)}
            onChange={(wanted) => setWanted(length, wanted)}
          >
            {length} ft
          </Switch>
        ))}
      </div>
    </Panel>
  );
}

function setWanted(length: number, wanted: boolean): void {
  changeSettings((settings) => {
    const others = settings.cutting.excludedLengthsFt.filter((one) => one !== length);
    const excludedLengthsFt = wanted ? others : [...others, length].sort((a, b) => a - b);
    return { ...settings, cutting: { ...settings.cutting, excludedLengthsFt } };
  });
}
