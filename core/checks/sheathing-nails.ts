import { found, held, type Check, source, step, wholeEave } from './answer.ts';
import { count, inches } from './measured.ts';

const what = 'Sheathing nails against the nailing table near the roof edge';
/** Largest spacing near roof edges and gable ends. [in] */
const edgeSpacingIn = 6;

/**
 * Nails of the sheathing: panels at 6 in. along edges and in the field within 48 in. of a roof edge; planks two to a bearing,
 * three where they are 8 in. nominal or wider. Source: IRC Table R602.3(1) and its note on roof edges; fastener rows partly
 * from memory, and the field spacing differs between editions: the closer one is taken.
 */
export const sheathingNails: Check = {
  check: 'sheathing-nails',
  group: 'Nails',
  title: 'Sheathing to tails',
  run: (eave) => {
    const { sheathingNail, sheathingSpacingIn, plankNailsPerBearing } = eave.input.settings.fastening;
    const told = { what, at: wholeEave };
    switch (eave.cover.kind) {
      case 'panels':
        return held({
          ...told,
          value: inches(sheathingSpacingIn),
          limit: inches(edgeSpacingIn),
          worse: 'more',
          source: [source('IRC Table R602.3(1), panels, and note f', 'from-memory')],
          assumptions: ['Where the wind speed of the place is 130 mph or more, 4 in. may be asked for.'],
          remedy: 'Nails at 6 in. or closer would bring it within (Settings, Fastening).',
          why: [
            step(
              'Spacing along edges and in the field',
              'as set',
              sheathingNail,
              inches(sheathingSpacingIn).text,
              {
                ref: 'setting/fastening.sheathingSpacingIn',
              },
            ),
          ],
        });
      case 'planks': {
        const wide = eave.cover.coverIn > 5.5 + 1e-9;
        return held({
          ...told,
          value: count(plankNailsPerBearing, 'nail'),
          limit: count(wide ? 3 : 2, 'nail'),
          worse: 'less',
          source: [source('IRC Table R602.3(1), 1-in. sheathing to each bearing', 'from-memory')],
          remedy: `${wide ? 3 : 2} nails at each bearing would bring it within (Settings, Fastening).`,
          why: [
            step('Nails at each bearing', 'as set', sheathingNail, count(plankNailsPerBearing, 'nail').text, {
              ref: 'setting/fastening.plankNailsPerBearing',
            }),
          ],
        });
      }
      default:
        return found({
          ...told,
          source: [],
          why: [],
          verdict: 'not-covered',
          remedy: 'No sheathing is chosen for this eave. Choose panels or planks in Design.',
        });
    }
  },
};
