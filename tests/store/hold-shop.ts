import { openShop } from '../../electron/store/open-shop.ts';

// Run as a child: opens the shop file of a folder, says how that went, and holds it until killed.
const shop = openShop(process.argv[2] ?? '');
console.log(shop.ok ? 'open' : shop.problem.code);
if (shop.ok) setInterval(() => undefined, 1000);
