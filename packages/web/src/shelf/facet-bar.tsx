import { Checkbox, CheckboxGroup, Dialog, DialogTrigger, Popover } from 'react-aria-components';
import type { NoteRecord } from '../storage/records.ts';
import { Button } from '../ui/button.tsx';
import { Icon } from '../ui/icons.tsx';
import {
  FACET_WORDS,
  FACETS,
  facetValues,
  NO_FILTER,
  toggled,
  wordsOf,
  type Facet,
  type Filter,
} from './facets.ts';

interface FacetBarProps {
  readonly found: readonly NoteRecord[];
  readonly filter: Filter;
  readonly onChange: (filter: Filter) => void;
}

/** What else notes can be told apart by; the chosen values stand beside and can be taken back one by one. */
export function FacetBar({ found, filter, onChange }: FacetBarProps) {
  const chosen = FACETS.flatMap((facet) => [...filter[facet]].map((value) => ({ facet, value })));
  return (
    <div className="facets">
      {FACETS.map((facet) => (
        <FacetButton key={facet} facet={facet} found={found} filter={filter} onChange={onChange} />
      ))}
      {chosen.map(({ facet, value }) => (
        <button
          key={`${facet} ${value}`}
          type="button"
          className="chip"
          aria-label={`Take back ${FACET_WORDS[facet]}: ${wordsOf(facet, value)}`}
          onClick={() =>
            onChange(toggled(filter, facet, new Set([...filter[facet]].filter((other) => other !== value))))
          }
        >
          {wordsOf(facet, value)}
          <Icon name="close" />
        </button>
      ))}
      {chosen.length > 1 && (
        <Button tone="quiet" onPress={() => onChange(NO_FILTER)}>
          Show all
        </Button>
      )}
    </div>
  );
}

function FacetButton({ facet, found, filter, onChange }: FacetBarProps & { readonly facet: Facet }) {
  const values = facetValues(found, filter, facet);
  if (values.length === 0) return null;
  return (
    <DialogTrigger>
      <Button tone="quiet">
        {FACET_WORDS[facet]}
        <Icon name="down" />
      </Button>
      <Popover className="popover">
        <Dialog className="dialog" aria-label={FACET_WORDS[facet]}>
          <CheckboxGroup
            className="facet-values"
            aria-label={FACET_WORDS[facet]}
            value={[...filter[facet]]}
            onChange={(chosen) => onChange(toggled(filter, facet, new Set(chosen)))}
          >
            {values.map(({ value, words, count }) => (
              <Checkbox key={value} value={value} className="check">
                {({ isSelected }) => (
                  <>
                    <span className="box">{isSelected && <Icon name="tick" />}</span>
                    <span className="facet-words">{words}</span>
                    <span className="second">{count}</span>
                  </>
                )}
              </Checkbox>
            ))}
          </CheckboxGroup>
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}
