import { findNail } from '../takeoff/nails.ts';
import { found, noSource, type Check, source, step, wholeEave } from './answer.ts';

/**
 * Nails in the weather, and nails in treated lumber, have to stand corrosion: hot-dip galvanized or stainless.
 * Source: IRC R317.3 for treated lumber, from memory; common practice for fascia.
 */
export const nailCorrosion: Check = {
  check: 'nail-corrosion',
  group: 'Rules of thumb',
  title: 'Corrosion of the nails',
  run: (eave) => {
    const { fastening } = eave.input.settings;
    const { treated } = eave.design.structure;
    const wanted = [
      { use: 'Fascia', name: fastening.fasciaNail, ref: 'setting/fastening.fasciaNail' },
      ...(treated
        ? [
            { use: 'Extender to rafter', name: fastening.sister.nail, ref: 'setting/fastening.sister.nail' },
            { use: 'Extender to plate', name: fastening.plateNail, ref: 'setting/fastening.plateNail' },
            { use: 'Blocks', name: fastening.blockNail, ref: 'setting/fastening.blockNail' },
            { use: 'Sheathing', name: fastening.sheathingNail, ref: 'setting/fastening.sheathingNail' },
          ]
        : []),
    ];
    const bright = wanted.filter(({ name }) => findNail(name)?.finish !== 'galvanized');
    return found({
      what: treated
        ? 'Nails in the weather and in treated lumber against hot-dip galvanized or stainless'
        : 'Nails in the weather against hot-dip galvanized or stainless',
      at: wholeEave,
      value: {
        text: bright.length === 0 ? 'galvanized' : 'bright',
        number: bright.length,
        unit: 'uses of bright nails',
      },
      limit: { text: 'galvanized or stainless', number: 0, unit: 'uses of bright nails' },
      verdict: bright.length === 0 ? 'within' : 'beyond',
      remedy:
        bright.length === 0
          ? null
          : `Choose galvanized nails in Settings for: ${bright.map(({ use, name }) => `${use.toLowerCase()} (${name})`).join(', ')}.`,
      source: treated ? [source('IRC R317.3 (treated lumber)', 'from-memory'), noSource] : [noSource],
      why: wanted.map(({ use, name, ref }) =>
        step(use, 'nail as set', name, findNail(name)?.finish ?? 'not known here', { ref }),
      ),
    });
  },
};
