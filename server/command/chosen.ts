import { wordSpan } from '../engine/plan/gather';
import type { Step } from '../engine/plan/step';
import { nearest } from '../engine/quantity';
import type { Snapshot } from '../engine/snapshot';
import type { PlanView } from '../engine/view';
import type { Entry } from '../engine/walk/walk';
import { askedFor } from './asked';
import type { Words } from './description';
import type { Host } from './host';
import { load } from './load';
import { dayOf, failsOn } from './options';
import type { Places, Standing } from './places';
import { fine, found, Trouble } from './trouble';

/** The one plan that a command works on. */
export interface Chosen {
  readonly view: PlanView;
  readonly snapshot: Snapshot;
  readonly places: Places;
  /** As people know it. */
  readonly file: string;
  /** The path in the workspace. */
  readonly path: string;
}

/** Reads the file that the first argument names, with what it uses, and finds its plan. */
export async function chosenPlan(host: Host, words: Words): Promise<Chosen> {
  const file = await chosenFile(host, words);
  return { ...file, view: named(file.snapshot.plans(file.path), words.option('plan'), words.one(0)) };
}

/** Reads the file that the first argument names, with what it uses. */
export async function chosenFile(host: Host, words: Words): Promise<Omit<Chosen, 'view'>> {
  const word = words.one(0);
  const [asked, ...more] = await askedFor(host, [word]);
  const [path, ...others] = asked?.files ?? [];
  if (!asked || path === undefined || more.length > 0 || others.length > 0) {
    throw new Trouble(`${word} is a folder; name the file of one plan.`);
  }
  const { workspace, unread, places } = load(asked, dayOf(host, words));
  if (unread[0] !== undefined) throw new Trouble(unread[0]);
  return { snapshot: workspace.snapshot(), places, file: asked.shown(path), path };
}

function named(views: readonly PlanView[], name: string | undefined, file: string): PlanView {
  const names = views.map(({ plan }) => plan.name);
  const [only] = views;
  if (!only) throw new Trouble(`${file} holds no plan.`);
  if (name === undefined) {
    if (views.length === 1) return only;
    throw new Trouble(`${file} holds several plans; choose one with --plan: ${names.join(', ')}.`);
  }
  const view = views.find(({ plan }) => plan.name === name);
  if (view) return view;
  const near = nearest(name, names);
  throw new Trouble(
    `${file} holds no plan "${name}"${near ? `; perhaps "${near}" is meant` : `, but ${names.join(', ')}`}.`,
  );
}

/** Says on standard error what the check found in the plan's file, and gives the exit status that follows from it. */
export function verdict(host: Host, words: Words, { snapshot, path, file }: Omit<Chosen, 'view'>): number {
  const findings = snapshot.findings(path).filter(failsOn(words));
  if (findings.length === 0) return fine;
  const count = findings.length === 1 ? 'a finding' : `${findings.length} findings`;
  host.say(`jobplan: ${file} has ${count} that should be looked at first: jobplan check ${file}\n`);
  return found;
}

/** A step as a person names it, where it stands, and its number on the sheet. */
export interface Handle {
  readonly number: number;
  /** Its label, or else its number. */
  readonly step: string | number;
  readonly standing: Standing;
}

/** Handles of all steps walked: they count through, the rounds of a repeat once. */
export function handles({ view, places }: Chosen): (entry: Entry) => Handle {
  const numbers = new Map<Step, number>();
  for (const { slot } of view.walk.entries) if (!numbers.has(slot.step)) numbers.set(slot.step, numbers.size + 1);
  return ({ slot: { step } }) => {
    const number = numbers.get(step)!;
    return {
      number,
      step: step.label ?? number,
      standing: places.standing({ file: step.file, item: step.bound.item, ...wordSpan(step.bound) }),
    };
  };
}
