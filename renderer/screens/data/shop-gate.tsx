import type { ReactNode } from 'react';
import { useAnswer } from '../../host/queries.ts';
import { RescueScreen } from './rescue-screen.tsx';

/** Lets the screens through unless the shop file has to be restored first. */
export function ShopGate({ children }: { readonly children: ReactNode }) {
  const { data } = useAnswer('shop.state', {});
  return data === undefined || data.problem === null ? children : <RescueScreen state={data} />;
}
