import { useState } from 'react';
import {
  Dialog as AriaDialog,
  DialogTrigger,
  Popover,
  Radio,
  RadioGroup,
  Label,
} from 'react-aria-components';
import { Button } from '../ui/button.tsx';
import { Card } from '../ui/card.tsx';
import { PREFERENCES, setPreference, usePreferences, type PreferenceName } from '../ui/preferences.ts';
import { addressOf } from '../ui/routes.ts';
import { useStore } from '../ui/store.ts';
import { KeyList } from './key-list.tsx';
import { readiness } from './offline.ts';

const WORDS: Readonly<Record<PreferenceName, readonly [string, Readonly<Record<string, string>>]>> = {
  theme: ['Light', { system: 'As the system', light: 'By day', dark: 'By lamplight' }],
  suits: ['Suits', { two: 'Two colours', four: 'Four colours' }],
  print: ['Print', { usual: 'Usual', large: 'Large' }],
  motion: ['Motion', { system: 'As the system', reduced: 'Still', full: 'Full' }],
};

/** How everything looks; kept in this browser. */
export function PreferencesButton() {
  const preferences = usePreferences();
  const { online, offlineReady, install } = useStore(readiness);
  const [keys, setKeys] = useState(false);
  return (
    <>
      <DialogTrigger>
        <Button tone="quiet" label="How it looks">
          Aa
        </Button>
        <Popover className="popover">
          <AriaDialog className="dialog" aria-label="How it looks">
            {names.map((name) => (
              <RadioGroup
                key={name}
                className="field"
                value={preferences[name]}
                onChange={(value) => setPreference(name, value)}
              >
                <Label>{WORDS[name][0]}</Label>
                <div className="choices">
                  {PREFERENCES[name].map((value) => (
                    <Radio key={value} value={value} className="choice">
                      {WORDS[name][1][value]}
                    </Radio>
                  ))}
                </div>
              </RadioGroup>
            ))}
            <div className="suit-sample" aria-hidden="true">
              {(['clubs', 'hearts', 'spades', 'diamonds'] as const).map((suit) => (
                <Card key={suit} face={{ kind: 'pip', rank: 'A', suit }} up label="" />
              ))}
            </div>
            <p className="second readiness">
              {online ? '' : 'There is no network just now. '}
              {offlineReady ? 'Everything works without a network.' : 'Your notes stay in this browser.'}
            </p>
            <div className="dialog-actions">
              {install !== undefined && (
                <Button tone="pencil" onPress={() => void install()}>
                  Install on this machine
                </Button>
              )}
              <a className="button" href={addressOf({ room: 'help', page: '' })}>
                Help
              </a>
              <Button onPress={() => setKeys(true)}>Keys</Button>
            </div>
          </AriaDialog>
        </Popover>
      </DialogTrigger>
      <KeyList isOpen={keys} onOpenChange={setKeys} />
    </>
  );
}

const names = ['theme', 'suits', 'print', 'motion'] as const satisfies readonly PreferenceName[];
