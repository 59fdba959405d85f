/** Faults of horn files in words. */
import type { HornFileFault, WantedValue } from '../horn/hornFileFault.ts';
import type { HornFileWords } from './areas/hornFiles.ts';

/** What is wrong with a horn file and what to write, as one clause without a full stop. */
export function hornFileFaultText(fault: HornFileFault, words: HornFileWords): string {
  switch (fault.is) {
    case 'not-json':
      return words.notJson(fault.plain);
    case 'wrong-value':
      return words.mustBe(
        fault.at || words.theFile,
        wantedText(fault.wanted, words),
        fault.got || words.nothing,
      );
    case 'unknown-field':
      return words.unknownField(fault.at || words.theFile, fault.field, fault.known.join(', '));
    case 'short-side-from':
      return words.shortSideFrom;
    case 'no-side-stoppable':
      return words.noSideStoppable;
    case 'order-for-some':
      return words.orderForSome;
    case 'order-twice':
      return words.orderTwice;
  }
}

function wantedText(wanted: WantedValue, words: HornFileWords): string {
  if (wanted.is === 'like') return wanted.example;
  if (wanted.is === 'number' || wanted.is === 'whole') return words[wanted.is](wanted.from, wanted.to);
  return words.wanted[wanted.is];
}

export type { HornFileWords } from './areas/hornFiles.ts';
