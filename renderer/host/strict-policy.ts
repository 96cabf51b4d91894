import { config } from 'zod';

// The page's policy forbids making code from text. zod would try once, and the browser would report it; this tells zod not
// to try. Imported first of all, before any schema is used.
config({ jitless: true });
