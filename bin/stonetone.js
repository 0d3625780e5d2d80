#!/usr/bin/env node
import { existsSync } from 'node:fs';

const built = new URL('../dist/node/cli/main.js', import.meta.url);
if (!existsSync(built)) {
  console.error('Stonetone is not built yet. Run: npm run build');
  process.exit(2);
}
const { main } = await import(built.href);
process.exitCode = await main(process.argv.slice(2));
