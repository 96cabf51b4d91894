import { type ReactNode, useState } from 'react';
import type { EaveDesign } from '../../../../core/eave/design-document.ts';
import { TailHandContext, useTailHand, useTailsOf } from './tail-hand.ts';

/** Gives the tails of an eave into the hand of what stands inside. */
export function TailsInHand(props: {
  readonly index: number;
  readonly design: EaveDesign;
  readonly children: ReactNode;
}) {
  const hand = useTailsOf(props.design.eaveId, props.index, props.design);
  return <TailHandContext.Provider value={hand}>{props.children}</TailHandContext.Provider>;
}

/** What stands inside rests while a tail is being moved, so that the plan alone keeps up with the pointer. */
export function WhileResting({ children }: { readonly children: ReactNode }) {
  const hand = useTailHand();
  const [resting, setResting] = useState(hand);
  if (!hand.isMoving && resting !== hand) setResting(hand);
  return <TailHandContext.Provider value={resting}>{children}</TailHandContext.Provider>;
}
