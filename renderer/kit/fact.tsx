/** One figure with its name above and what it means below. */
export function Fact(props: {
  readonly name: string;
  readonly value: string;
  readonly says?: string;
  readonly isCare?: boolean;
}) {
  return (
    <div className="fact">
      <dt>{props.name}</dt>
      <dd>
        <b className="numeric">{props.value}</b>
        {props.says === undefined ? null : (
          <span className={props.isCare === true ? 'tag tag-care' : 'muted'}>{props.says}</span>
        )}
      </dd>
    </div>
  );
}
