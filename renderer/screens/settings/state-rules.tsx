import { Plus, X } from 'lucide-react';
import type { StateRule } from '../../../core/offer/state-rules.ts';
import type { ShopSettings } from '../../../core/pricing/shop-settings.ts';
import { isCivilDate } from '../../../core/units/civil-date.ts';
import { MoneyField } from '../../fields/money-field.tsx';
import { DecimalField, NumberField } from '../../fields/number-field.tsx';
import { useKeptDrafts, type KeptDrafts } from '../../host/kept-drafts.ts';
import { useAnswer } from '../../host/queries.ts';
import { Banner } from '../../kit/banner.tsx';
import { Button } from '../../kit/button.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { Switch } from '../../kit/switch.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { changeSettings } from './settings-store.ts';

/** What states ask of deposits and of contracts signed at the home: the shop's own notes, each to be verified. */
export function StateRules({ settings }: { readonly settings: ShopSettings }) {
  const drafts = useKeptDrafts('settings');
  const info = useAnswer('app.info', {});
  const today = info.data?.today;
  return (
    <>
      <Banner tone="caution">
        These were read in explainers of such laws, not in the laws, and laws change. Verify each with your
        state before you rely on it; a job takes one only where you choose it under Quote, Terms.
      </Banner>
      {settings.stateRules.map((rule) => (
        <Rule key={rule.id} rule={rule} drafts={drafts} />
      ))}
      <div>
        <Button
          icon={<Plus size={14} aria-hidden="true" />}
          isDisabled={today === undefined}
          onPress={() => (today === undefined ? undefined : add(today))}
        >
          Add a rule
        </Button>
      </div>
    </>
  );
}

function Rule({ rule, drafts }: { readonly rule: StateRule; readonly drafts: KeptDrafts }) {
  const at = (entry: string): string => `stateRules.${rule.id}.${entry}`;
  const nameDraft = drafts.get(at('name'));
  const dayDraft = drafts.get(at('asOf'));
  return (
    <Panel
      title={rule.name}
      actions={
        <>
          <span className={rule.verified ? 'tag' : 'tag tag-care'}>
            {rule.verified ? `verified, ${rule.asOf}` : 'verify with your state'}
          </span>
          <IconButton
            label={`Remove the rule of ${rule.name}`}
            icon={<X size={14} aria-hidden="true" />}
            onPress={() =>
              changeSettings((settings) => ({
                ...settings,
                stateRules: settings.stateRules.filter(({ id }) => id !== rule.id),
              }))
            }
          />
        </>
      }
    >
      <div className="fields">
        <TextField
          label="Name"
          value={nameDraft ?? rule.name}
          maxLength={80}
          problem={nameDraft === null ? null : 'Give the rule a name.'}
          onChange={(name) => {
            drafts.set(at('name'), name.trim() === '' ? name : null);
            if (name.trim() !== '') change(rule.id, { name });
          }}
        />
        <DecimalField
          label="Deposit, at most"
          value={rule.depositPercent}
          range={{ least: 0, most: 100 }}
          unit="%"
          blankMeans="no limit"
          draft={drafts.get(at('depositPercent'))}
          onEntry={({ value, text, problem }) => {
            drafts.set(at('depositPercent'), problem === null ? null : text);
            if (problem === null) change(rule.id, { depositPercent: value });
          }}
        />
        <MoneyField
          label="And at most"
          value={rule.depositUsd}
          range={{ least: 0, most: 1_000_000 }}
          blankMeans="no limit"
          draft={drafts.get(at('depositUsd'))}
          onEntry={({ value, text, problem }) => {
            drafts.set(at('depositUsd'), problem === null ? null : text);
            if (problem === null) change(rule.id, { depositUsd: value });
          }}
        />
        <NumberField
          label="To cancel, signed at home"
          value={rule.coolingOffDays}
          whole
          range={{ least: 0, most: 60 }}
          unit="business days"
          draft={drafts.get(at('coolingOffDays'))}
          onEntry={({ value, text, problem }) => {
            drafts.set(at('coolingOffDays'), problem === null ? null : text);
            if (problem === null && value !== null) change(rule.id, { coolingOffDays: value });
          }}
        />
        <TextField
          label="Looked up on"
          value={dayDraft ?? rule.asOf}
          problem={dayDraft === null ? null : 'Write a day of the calendar, like 2026-04-30.'}
          onChange={(asOf) => {
            drafts.set(at('asOf'), isCivilDate(asOf) ? null : asOf);
            if (isCivilDate(asOf)) change(rule.id, { asOf });
          }}
        />
        <Switch isSelected={rule.verified} onChange={(verified) => change(rule.id, { verified })}>
          I verified it with my state
        </Switch>
        <div className="full">
          <TextField
            label="Note"
            value={rule.note}
            maxLength={500}
            onChange={(note) => change(rule.id, { note })}
          />
        </div>
      </div>
    </Panel>
  );
}

function change(id: string, entries: Partial<StateRule>): void {
  changeSettings((settings) => ({
    ...settings,
    stateRules: settings.stateRules.map((rule) => (rule.id === id ? { ...rule, ...entries } : rule)),
  }));
}

function add(today: string): void {
  changeSettings((settings) => {
    const used = new Set(settings.stateRules.map(({ id }) => id));
    let number = 1;
    while (used.has(`own-${number}`)) number += 1;
    const rule: StateRule = {
      id: `own-${number}`,
      name: 'My state',
      depositPercent: null,
      depositUsd: null,
      coolingOffDays: 3,
      note: '',
      asOf: today,
      verified: false,
    };
    return { ...settings, stateRules: [...settings.stateRules, rule] };
  });
}
