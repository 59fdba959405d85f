/// <reference lib="dom" />
/** The whole argument in one picture: the curve falls to the right as the hand closes, beside the ladder of harmonics. */
import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { noteName } from '../../../core/index.ts';
import { reader, words } from '../choices.ts';
import { type Ladder, pitchAt, type Rung } from './ladder.ts';

/** The picture grows with the page's letters. */
const UNITS_A_REM = 16;
const HEIGHT = 380;
const TOP = 26;
const BOTTOM = 352;
const LEFT = 14;

/** @param closing 0 open … 1 sealed */
export function LadderPicture({
  ladder,
  closing,
  children,
}: {
  ladder: Ladder;
  closing: number;
  /** The slider, which runs below the curve. */
  children: ComponentChildren;
}) {
  const frame = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(620);
  useEffect(() => {
    const observer = new ResizeObserver(([entry]) => {
      const { fontSize } = getComputedStyle(document.documentElement);
      setWidth(Math.max(280, (entry!.contentRect.width * UNITS_A_REM) / Number.parseFloat(fontSize)));
    });
    observer.observe(frame.current!);
    return () => observer.disconnect();
  }, []);

  const { rungs, pulled, below, way, wantedCents } = ladder;
  const { value: say } = words;
  const name = ({ written }: Rung) => noteName(written, reader.value);
  const lowest = Math.min(rungs[0]!.cents, ...way);
  const highest = rungs[rungs.length - 1]!.cents;
  const y = (cents: number) => BOTTOM - ((cents - lowest) / (highest - lowest)) * (BOTTOM - TOP);
  const ladderWidth = Math.min(150, width * 0.34);
  const right = width - ladderWidth - 30;
  const rail = width - ladderWidth;
  const x = (step: number) => LEFT + step * (right - LEFT);
  const pointsTo = (end: number) => {
    const points = way
      .map((cents, i) => [i / (way.length - 1), cents] as const)
      .filter(([step]) => step < end);
    return [...points, [end, pitchAt(ladder, end)] as const]
      .map(([step, cents]) => `${x(step).toFixed(1)} ${y(cents).toFixed(1)}`)
      .join('L');
  };
  const here = pitchAt(ladder, closing);
  const rest = Math.round(way[way.length - 1]! - below.cents);
  const description = `${say.pulled(pulled.harmonicNumber, name(pulled))}. ${say.above(below.harmonicNumber, name(below))}; ${say.comesToRest(rest)}.`;
  return (
    <div ref={frame} class="ladder-frame">
      <svg
        class="ladder"
        role="img"
        aria-label={`${say.ladder}. ${description}`}
        viewBox={`0 0 ${width} ${HEIGHT}`}
        style={{ width: `${width / UNITS_A_REM}rem` }}
      >
        <line class="wanted" x1={LEFT} x2={rail} y1={y(wantedCents)} y2={y(wantedCents)} />
        <path
          class="rails"
          d={`M${rail} ${TOP - 14}V${BOTTOM + 14}M${rail + 44} ${TOP - 14}V${BOTTOM + 14}`}
        />
        {rungs.map((rung) => {
          const role =
            rung.harmonicNumber === pulled.harmonicNumber
              ? 'pulled'
              : rung.harmonicNumber === below.harmonicNumber
                ? 'below'
                : 'other';
          return (
            <g key={rung.harmonicNumber} class={`rung ${role}`}>
              {role !== 'other' && (
                <line class="lead" x1={LEFT} x2={rail} y1={y(rung.cents)} y2={y(rung.cents)} />
              )}
              <line class="step" x1={rail} x2={rail + 44} y1={y(rung.cents)} y2={y(rung.cents)} />
              <text x={rail + 22} y={y(rung.cents) - 5} text-anchor="middle">
                {rung.harmonicNumber}
              </text>
              <text x={rail + 54} y={y(rung.cents) + 5}>
                {name(rung)}
              </text>
            </g>
          );
        })}
        <path class="way" d={`M${pointsTo(1)}`} />
        <path class="drawn" d={`M${pointsTo(closing)}`} />
        <line class="at" x1={x(closing)} x2={rail + 44} y1={y(here)} y2={y(here)} />
        <circle class="tone" cx={x(closing)} cy={y(here)} r="7" />
        <text class="end" x={LEFT} y={HEIGHT - 4}>
          {say.open}
        </text>
        <text class="end" x={right} y={HEIGHT - 4} text-anchor="end">
          {say.sealed}
        </text>
      </svg>
      {children}
      <p class="legend">
        <span class="pulled">{say.pulled(pulled.harmonicNumber, name(pulled))}</span>
        <span class="below">
          {say.above(below.harmonicNumber, name(below))}; {say.comesToRest(rest)}
        </span>
      </p>
    </div>
  );
}
