/** The exact theories behind the short formulas of the acoustics, worked out slowly and independently for the tests. */

/** A complex number. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

const complex = (re: number, im = 0): Complex => ({ re, im });
const add = (a: Complex, b: Complex) => complex(a.re + b.re, a.im + b.im);
const times = (a: Complex, b: Complex) => complex(a.re * b.re - a.im * b.im, a.re * b.im + a.im * b.re);
const over = (a: Complex, b: Complex): Complex => {
  const norm = b.re * b.re + b.im * b.im;
  return complex((a.re * b.re + a.im * b.im) / norm, (a.im * b.re - a.re * b.im) / norm);
};
const root = (a: Complex): Complex => {
  const size = Math.sqrt(Math.hypot(a.re, a.im));
  const angle = Math.atan2(a.im, a.re) / 2;
  return complex(size * Math.cos(angle), size * Math.sin(angle));
};

/**
 * Propagation constant and characteristic impedance (over ρc/S) of a round tube with viscous and thermal losses,
 * by C. Zwikker and C. W. Kosten, Sound Absorbing Materials (1949): 1 − F with F = 2 J1(z)/(z J0(z)), z = r·√−j.
 * @param viscousRatio radius over the viscous layer, r
 * @param air ratio of specific heats and root of the Prandtl number
 * @returns Γ·c/ω and Zc·S/ρc
 */
export function zwikkerKosten(
  viscousRatio: number,
  air: { readonly gamma: number; readonly rootPrandtl: number },
): { propagation: Complex; impedance: Complex } {
  const viscous = boundaryShare(viscousRatio);
  const thermal = boundaryShare(viscousRatio * air.rootPrandtl);
  const series = over(complex(0, 1), add(complex(1), complex(-viscous.re, -viscous.im)));
  const shunt = times(complex(0, 1), add(complex(1), times(complex(air.gamma - 1), thermal)));
  return { propagation: root(times(series, shunt)), impedance: root(over(series, shunt)) };
}

/** 2 J1(z)/(z J0(z)) at z = ratio·√−j, by the continued fraction of J1/J0. */
function boundaryShare(ratio: number): Complex {
  const z = times(complex(ratio), complex(Math.SQRT1_2, -Math.SQRT1_2));
  let tail = complex(0);
  for (let k = 4 * Math.ceil(ratio) + 60; k >= 1; k--)
    tail = over(complex(1), add(over(complex(2 * k), z), complex(-tail.re, -tail.im)));
  return over(times(complex(2), tail), z);
}

/**
 * Reflection at the end of an unflanged pipe by H. Levine and J. Schwinger, Phys. Rev. 73 (1948), 383–406: magnitude
 * and end correction over the radius, for ka below 3.83.
 */
export function levineSchwinger(ka: number): { magnitude: number; correction: number } {
  const loss = integrate(0, Math.PI / 2, 4000, (t) => {
    const x = ka * Math.sin(t);
    const [j, y] = besselOne(x);
    return Math.atan2(j, -y) / Math.sin(t);
  });
  const near = integrate(0, Math.PI / 2, 4000, (t) => {
    const x = ka * Math.sin(t);
    const [j, y] = besselOne(x);
    return Math.log(Math.PI * j * Math.hypot(j, y)) / x;
  });
  const far = integrate(-14, 24, 4000, (s) => {
    const x = Math.exp(s);
    return -Math.log(twiceIK(x)) / Math.hypot(x, ka);
  });
  return { magnitude: Math.exp((-2 / Math.PI) * loss), correction: (near + far) / Math.PI };
}

/** J1 and Y1 by Bessel's integrals, for 0 < x < 4. */
function besselOne(x: number): [j: number, y: number] {
  const j = integrate(0, Math.PI, 60, (t) => Math.cos(t - x * Math.sin(t))) / Math.PI;
  if (x < 1e-2) return [j, -2 / (Math.PI * x) + (x / Math.PI) * (Math.log(x / 2) + 0.5772156649 - 0.5)];
  const wave = integrate(0, Math.PI, 60, (t) => Math.sin(x * Math.sin(t) - t));
  const end = Math.asinh(40 / x);
  const decay = integrate(0, end, 300, (t) => 2 * Math.sinh(t) * Math.exp(-x * Math.sinh(t)));
  return [j, (wave - decay) / Math.PI];
}

/** 2·I1(x)·K1(x) by their integrals; the start of the asymptotic series where x is large. */
function twiceIK(x: number): number {
  if (x < 1e-3) return 1;
  if (x > 40) return (1 - 3 / (8 * x * x)) / x;
  const i = integrate(0, Math.PI, 200, (t) => Math.exp(x * (Math.cos(t) - 1)) * Math.cos(t)) / Math.PI;
  const k = integrate(
    0,
    Math.acosh(1 + 40 / x),
    400,
    (t) => Math.exp(-x * (Math.cosh(t) - 1)) * Math.cosh(t),
  );
  return 2 * i * k;
}

/** The midpoint rule: it never touches the ends, where some of these integrands are 0/0. */
function integrate(from: number, to: number, pieces: number, f: (x: number) => number): number {
  const width = (to - from) / pieces;
  let sum = 0;
  for (let i = 0; i < pieces; i++) sum += f(from + (i + 0.5) * width);
  return sum * width;
}
