import { isOwnHost } from './managers/phones/letInHere.ts';

/** Has a phone keep the built screens, where its address is one that browsers trust; elsewhere nothing happens. */
export function keepScreens(): void {
  if (!('serviceWorker' in navigator) || isOwnHost(location.hostname)) return;
  // a certificate that the phone does not trust refuses it; the screens say so
  navigator.serviceWorker.register('/worker.js').catch(() => {});
}
