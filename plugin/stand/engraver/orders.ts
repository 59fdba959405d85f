/** What the page asks of the engraving worker, and what comes back. Plain data, since it crosses threads. */
import type { CourseRequest, PlainReader, Settings, Show, Transposition } from '../../../core/index.ts';
import type { Copy } from '../../etude/sheetText.ts';
import type { Screen } from '../../pages/partMusic.ts';

/** A page of exercises, not engraved yet. */
export interface ComposedPage {
  readonly title: string;
  /** Below the title. */
  readonly lines: readonly string[];
  /** What each exercise trains. */
  readonly trains: readonly string[];
  /** MusicXML. */
  readonly text: string;
}

/** An order; its ticket comes back with every answer. */
export type Order =
  | {
      readonly kind: 'sheet';
      readonly ticket: number;
      /** MusicXML whose line breaks stand. */
      readonly text: string;
      /** In tenths of a millimetre at full size. */
      readonly width: number;
      /** True to end lines where the width does, and to leave out what stands over the exercises but their tempo. */
      readonly isNarrow: boolean;
    }
  | {
      /** Composed here, since it takes seconds. */
      readonly kind: 'course';
      readonly ticket: number;
      readonly request: Omit<CourseRequest, 'reader'>;
      readonly reader: PlainReader;
      readonly copy: Copy;
    }
  | {
      readonly kind: 'part';
      readonly ticket: number;
      /** MusicXML as its author left it. */
      readonly text: string;
      readonly partIds: readonly string[];
      /** For notes whose part states none. */
      readonly key: Transposition | null;
      readonly settings: Settings;
      readonly show: Show;
      readonly reader: PlainReader;
      /** All parts for the first screen, then all for the next. */
      readonly screens: readonly Screen[];
    };

/** One system as a drawing; lengths are those of its viewBox. */
export interface SystemPicture {
  readonly width: number;
  readonly height: number;
  readonly content: string;
  /** True where an exercise begins. */
  readonly isFirst: boolean;
}

/** The outlines and the font that drawings of an answer need of the page. */
export interface SharedOutlines {
  readonly glyphs: readonly (readonly [name: string, outline: string])[];
  readonly fontFace: string | null;
}

/** An answer, in the order of the orders. */
export type Answer =
  | ({
      readonly kind: 'systems';
      readonly ticket: number;
      readonly systems: readonly SystemPicture[];
    } & SharedOutlines)
  | ({
      readonly kind: 'part';
      readonly ticket: number;
      readonly part: number;
      readonly screen: Screen;
      readonly html: string;
    } & SharedOutlines)
  | { readonly kind: 'course'; readonly ticket: number; readonly pages: readonly ComposedPage[] }
  | { readonly kind: 'refused'; readonly ticket: number; readonly reason: string }
  | { readonly kind: 'done'; readonly ticket: number }
  | { readonly kind: 'fault'; readonly ticket: number; readonly isUnreadable: boolean };
