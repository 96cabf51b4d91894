import { SectionLinks } from '../../kit/section-links.tsx';

/** The parts of what the shop knows of prices and boards. */
export function PriceParts() {
  return (
    <SectionLinks
      label="Parts of the price list"
      links={[
        { href: '/prices', label: 'Prices' },
        { href: '/prices-over-time', label: 'Over time' },
        { href: '/prices-stock', label: 'Boards on hand' },
      ]}
    />
  );
}
