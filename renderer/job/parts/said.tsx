import { Fragment } from 'react';

/** Lengths in feet, inches and fractions, pitches, and marks such as A-E05: what must not be broken over two lines. */
const figures =
  /(\d+(?:-\d+)*-\d+\/\d+"?|\d+' \d+(?:-\d+\/\d+)?"|\d+(?:-\d+\/\d+|\/\d+)?"|\d+(?:\.\d+)?\/12\b|[A-Z]{1,2}-[A-Z]+\d+[a-z]?|\$[\d,]+(?:\.\d+)?|\d+(?:-\d+\/\d+| \d+\/\d+)?(?= (?:in|ft)\b) (?:in|ft)\b\.?)/;

/** The figures in a text, each a part of its own; every odd part is one. */
export function figuresIn(text: string): readonly string[] {
  return text.split(figures);
}

/** A sentence in which no length and no mark breaks over two lines. */
export function Said({ text }: { readonly text: string }) {
  return figuresIn(text).map((part, index) =>
    index % 2 === 1 ? (
      <span key={index} className="no-wrap">
        {part}
      </span>
    ) : (
      <Fragment key={index}>{part}</Fragment>
    ),
  );
}
