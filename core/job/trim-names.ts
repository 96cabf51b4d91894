import type { EaveEnd } from '../eave/design-document.ts';
import type { JobFile } from './job-file.ts';

/**
 * Takes the spaces off both ends of every name and id of a job file, so that `porch ` and `porch` are one eave and no
 * paper shows a name that looks blank.
 * @param file - as read; the same for whoever reads it again.
 */
export function trimNames(file: JobFile): JobFile {
  return {
    ...file,
    job: { ...file.job, name: file.job.name.trim() },
    survey: {
      ...file.survey,
      eaves: file.survey.eaves.map((eave) => ({
        ...eave,
        id: eave.id.trim(),
        name: eave.name.trim(),
        rafters: eave.rafters.map((rafter) => ({ ...rafter, id: rafter.id.trim() })),
        obstructions: eave.obstructions.map((thing) => ({
          ...thing,
          id: thing.id.trim(),
          label: thing.label.trim(),
        })),
        otherOldBlocks: eave.otherOldBlocks.map((id) => id.trim()),
        wallReadings: eave.wallReadings.map((reading) => ({ ...reading, id: reading.id.trim() })),
        plateReadings: eave.plateReadings.map((reading) => ({ ...reading, id: reading.id.trim() })),
      })),
      rakes: file.survey.rakes.map((rake) => ({
        ...rake,
        id: rake.id.trim(),
        name: rake.name.trim(),
        eaveId: rake.eaveId.trim(),
      })),
    },
    design: {
      ...file.design,
      rakes: file.design.rakes.map((rake) => ({
        ...rake,
        rakeId: rake.rakeId.trim(),
        sheathing: { ...rake.sheathing, itemId: rake.sheathing.itemId.trim() },
      })),
      eaves: file.design.eaves.map((design) => ({
        ...design,
        eaveId: design.eaveId.trim(),
        ends: { left: trimmedEnd(design.ends.left), right: trimmedEnd(design.ends.right) },
        pins: design.pins.map((pin) => ({ ...pin, rafterId: pin.rafterId.trim() })),
        addedTails: design.addedTails.map((tail) => ({ ...tail, id: tail.id.trim() })),
        layout: { ...design.layout, baysWithoutTail: design.layout.baysWithoutTail.map((id) => id.trim()) },
        blocks: { ...design.blocks, openBays: design.blocks.openBays.map((id) => id.trim()) },
        sheathing: { ...design.sheathing, itemId: design.sheathing.itemId.trim() },
        soffit: {
          ...design.soffit,
          itemId: design.soffit.itemId.trim(),
          ventItemId: design.soffit.ventItemId.trim(),
        },
      })),
      asBuilt: file.design.asBuilt.map((built) => ({
        ...built,
        eaveId: built.eaveId.trim(),
        extenderId: built.extenderId.trim(),
      })),
      extraCosts: file.design.extraCosts.map((extra) => ({
        ...extra,
        id: extra.id.trim(),
        description: extra.description.trim(),
      })),
    },
    settings: {
      ...file.settings,
      labour: {
        ...file.settings.labour,
        rates: file.settings.labour.rates.map((rate) => ({ ...rate, task: rate.task.trim() })),
      },
    },
    priceList: file.priceList.map((item) => ({
      ...item,
      id: item.id.trim(),
      description: item.description.trim(),
    })),
  };
}

function trimmedEnd(end: EaveEnd): EaveEnd {
  return { ...end, meets: end.meets.trim() };
}
