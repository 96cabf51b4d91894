/** An exact fraction of whole numbers: an oracle for money that shares nothing with decimal.js. */
export type Rational = { readonly top: bigint; readonly bottom: bigint };

export function rational(text: string): Rational {
  const [whole = '0', places = ''] = text.split('.');
  return { top: BigInt(`${whole}${places}`), bottom: 10n ** BigInt(places.length) };
}
export function plus(a: Rational, b: Rational): Rational {
  return { top: a.top * b.bottom + b.top * a.bottom, bottom: a.bottom * b.bottom };
}
export function times(a: Rational, b: Rational): Rational {
  return { top: a.top * b.top, bottom: a.bottom * b.bottom };
}
export function over(a: Rational, b: Rational): Rational {
  return { top: a.top * b.bottom, bottom: a.bottom * b.top };
}
export function minus(a: Rational, b: Rational): Rational {
  return plus(a, { top: -b.top, bottom: b.bottom });
}

/** Whole cents half up of an amount that is not negative. */
export function cents(amount: Rational): bigint {
  return (amount.top * 200n + amount.bottom) / (amount.bottom * 2n);
}
export function ofCents(amount: bigint): Rational {
  return { top: amount, bottom: 100n };
}
export function centsText(amount: bigint): string {
  const text = amount.toString().padStart(3, '0');
  return `${text.slice(0, -2)}.${text.slice(-2)}`;
}
