import { useEffect } from 'react';
import { Redirect } from 'wouter';
import type { ShopSettings } from '../../../core/pricing/shop-settings.ts';
import { useAnswer } from '../../host/queries.ts';
import { Answer } from '../../kit/answer.tsx';
import { Banner } from '../../kit/banner.tsx';
import { Button } from '../../kit/button.tsx';
import { SavedLine } from '../../kit/saved-line.tsx';
import { Screen } from '../../kit/screen.tsx';
import { SectionLinks } from '../../kit/section-links.tsx';
import { DataPart } from '../data/data-part.tsx';
import { CrewPeople } from './crew-people.tsx';
import { ExcludedLengths } from './excluded-lengths.tsx';
import { LabourRates } from './labour-rates.tsx';
import { layoutGroups } from './layout-setting-fields.ts';
import { OwnPhases } from './own-phases.tsx';
import { jobGroups, labourGroups, moneyGroups, nailGroups, sawGroups, shopGroups } from './setting-fields.ts';
import { SettingGroups } from './setting-groups.tsx';
import { LogoPanel } from './logo-panel.tsx';
import { StateRules } from './state-rules.tsx';
import { SupplierDeliveries } from './supplier-deliveries.tsx';
import { takeSettings, takeSettingsAnyway, useSettings, useSettingsSaveState } from './settings-store.ts';

const parts = [
  { id: 'shop', label: 'Shop' },
  { id: 'money', label: 'Money' },
  { id: 'quotes', label: 'Quotes' },
  { id: 'labour', label: 'Labour' },
  { id: 'jobs', label: 'Crew and bills' },
  { id: 'saw', label: 'Saw' },
  { id: 'layout', label: 'Layout' },
  { id: 'nails', label: 'Nails' },
  { id: 'data', label: 'Data' },
] as const;

type PartId = (typeof parts)[number]['id'];

/** The shop's own numbers, part by part, saved as they are typed. */
export function SettingsScreen({ part }: { readonly part: string | undefined }) {
  const answer = useAnswer('settings.get', {});
  const settings = useSettings();
  const saveState = useSettingsSaveState();
  const { data, refetch } = answer;
  useEffect(() => {
    if (data !== undefined) takeSettings(data);
  }, [data]);
  const here = parts.find((one) => one.id === part);
  if (here === undefined) return <Redirect to="/settings/shop" replace />;
  const takeTheirs = async (): Promise<void> => {
    const fresh = await refetch();
    if (fresh.data !== undefined) takeSettingsAnyway(fresh.data);
  };
  const conflict = saveState.kind === 'problem' && saveState.problem.code === 'changed-elsewhere';
  return (
    <Screen
      title="Settings"
      beside={<SavedLine state={saveState} />}
      sections={
        <SectionLinks
          label="Parts of the settings"
          links={parts.map((one) => ({ href: `/settings/${one.id}`, label: one.label }))}
        />
      }
    >
      {conflict ? (
        <Banner
          tone="caution"
          isLive
          actions={<Button onPress={() => void takeTheirs()}>Take the other window's settings</Button>}
        >
          The settings were changed in another window since. What you changed here is not saved; take the
          other window's settings and enter it again.
        </Banner>
      ) : null}
      <Answer query={answer}>
        {() => (settings === null ? null : <SettingsPart part={here.id} settings={settings} />)}
      </Answer>
    </Screen>
  );
}

function SettingsPart({ part, settings }: { readonly part: PartId; readonly settings: ShopSettings }) {
  switch (part) {
    case 'shop':
      return (
        <>
          <SettingGroups groups={shopGroups} settings={settings} />
          <LogoPanel />
        </>
      );
    case 'money':
      return <SettingGroups groups={moneyGroups} settings={settings} />;
    case 'quotes':
      return <StateRules settings={settings} />;
    case 'labour':
      return (
        <>
          {Number(settings.labour.wageUsdPerHour) === 0 ? (
            <Banner tone="caution">
              No wage is set yet, so labour counts as nothing in every estimate. Enter what an hour costs you.
            </Banner>
          ) : null}
          <SettingGroups groups={labourGroups} settings={settings} />
          <LabourRates settings={settings} />
        </>
      );
    case 'jobs':
      return (
        <>
          <SettingGroups groups={jobGroups} settings={settings} />
          <CrewPeople settings={settings} />
          <OwnPhases settings={settings} />
        </>
      );
    case 'saw':
      return (
        <>
          <SettingGroups groups={sawGroups} settings={settings} />
          <ExcludedLengths settings={settings} />
          <SupplierDeliveries settings={settings} />
        </>
      );
    case 'layout':
      return <SettingGroups groups={layoutGroups} settings={settings} />;
    case 'nails':
      return (
        <>
          <Banner tone="caution">
            Nail sizes and counts are structural. The local code, the building department or a licensed
            engineer decides what a joint needs; these are the numbers that the takeoff counts with.
          </Banner>
          <SettingGroups groups={nailGroups} settings={settings} />
        </>
      );
    case 'data':
      return <DataPart />;
    default:
      return part satisfies never;
  }
}
