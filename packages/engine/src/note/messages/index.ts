import type { Message } from './message.ts';
import { aboutNothing } from './about-nothing.ts';
import { andMore } from './and-more.ts';
import { blockNotUnderstood } from './block-not-understood.ts';
import { blockWithoutSteps } from './block-without-steps.ts';
import { blocksOfNone } from './blocks-of-none.ts';
import { branchesAreSteps } from './branches-are-steps.ts';
import { budgetGraph } from './budget-graph.ts';
import { budgetRule } from './budget-rule.ts';
import { budgetTables } from './budget-tables.ts';
import { budgetTrials } from './budget-trials.ts';
import { bulletsNotRead } from './bullets-not-read.ts';
import { certificateBudget } from './certificate-budget.ts';
import { certificateClaim } from './certificate-claim.ts';
import { certificateColumns } from './certificate-columns.ts';
import { certificateEdge } from './certificate-edge.ts';
import { certificateHash } from './certificate-hash.ts';
import { certificateJson } from './certificate-json.ts';
import { certificateMissing } from './certificate-missing.ts';
import { certificateNoForm } from './certificate-no-form.ts';
import { certificateNotProved } from './certificate-not-proved.ts';
import { certificateNote } from './certificate-note.ts';
import { certificateRuleEndless } from './certificate-rule-endless.ts';
import { certificateRule } from './certificate-rule.ts';
import { certificateRulesDiffer } from './certificate-rules-differ.ts';
import { certificateSentences } from './certificate-sentences.ts';
import { certificateSet } from './certificate-set.ts';
import { certificateShape } from './certificate-shape.ts';
import { certificateStart } from './certificate-start.ts';
import { certificateStuck } from './certificate-stuck.ts';
import { chanceEndless } from './chance-endless.ts';
import { chanceEstimate } from './chance-estimate.ts';
import { chanceNested } from './chance-nested.ts';
import { chanceNumber } from './chance-number.ts';
import { chancePerformer } from './chance-performer.ts';
import { chanceTooSmall } from './chance-too-small.ts';
import { choicesLeft } from './choices-left.ts';
import { countEndsInTail } from './count-ends-in-tail.ts';
import { countFromNone } from './count-from-none.ts';
import { cutTooDeep } from './cut-too-deep.ts';
import { duplicateCard } from './duplicate-card.ts';
import { eachInEach } from './each-in-each.ts';
import { freedomManyRounds } from './freedom-many-rounds.ts';
import { freedomMixTooLarge } from './freedom-mix-too-large.ts';
import { freedomNothingProved } from './freedom-nothing-proved.ts';
import { freedomSomeUnsettled } from './freedom-some-unsettled.ts';
import { freedomTablesSpent } from './freedom-tables-spent.ts';
import { headKey } from './head-key.ts';
import { headNotKeys } from './head-not-keys.ts';
import { headTooDeep } from './head-too-deep.ts';
import { headTooLong } from './head-too-long.ts';
import { headUnclosed } from './head-unclosed.ts';
import { headUnreadable } from './head-unreadable.ts';
import { headValue } from './head-value.ts';
import { inNoPile } from './in-no-pile.ts';
import { itUnclear } from './it-unclear.ts';
import { leftOver } from './left-over.ts';
import { lineEmpty } from './line-empty.ts';
import { looksUnseen } from './looks-unseen.ts';
import { markNotPut } from './mark-not-put.ts';
import { mishapEmpty } from './mishap-empty.ts';
import { mishapNames } from './mishap-names.ts';
import { nameIsANumber } from './name-is-a-number.ts';
import { nameIsAWord } from './name-is-a-word.ts';
import { nameTaken } from './name-taken.ts';
import { needsSecret } from './needs-secret.ts';
import { neverEnds } from './never-ends.ts';
import { neverWhen } from './never-when.ts';
import { noChoiceFits } from './no-choice-fits.ts';
import { noCommonRule } from './no-common-rule.ts';
import { noDeeperCut } from './no-deeper-cut.ts';
import { noEndingLines } from './no-ending-lines.ts';
import { noLayout } from './no-layout.ts';
import { noLetters } from './no-letters.ts';
import { noMiddlePile } from './no-middle-pile.ts';
import { noNumberBetween } from './no-number-between.ts';
import { noNumberNamed } from './no-number-named.ts';
import { noNumberedPiles } from './no-numbered-piles.ts';
import { noPiles } from './no-piles.ts';
import { noPlaceForIt } from './no-place-for-it.ts';
import { noRows } from './no-rows.ts';
import { noSetUpLines } from './no-set-up-lines.ts';
import { noSetUp } from './no-set-up.ts';
import { noStartingOrder } from './no-starting-order.ts';
import { noSteps } from './no-steps.ts';
import { noSuchCard } from './no-such-card.ts';
import { noSuchChoice } from './no-such-choice.ts';
import { noSuchHour } from './no-such-hour.ts';
import { noSuchPile } from './no-such-pile.ts';
import { noSuchPlace } from './no-such-place.ts';
import { noTimes } from './no-times.ts';
import { noWorking } from './no-working.ts';
import { notAKey } from './not-a-key.ts';
import { notANumber } from './not-a-number.ts';
import { notAnOrder } from './not-an-order.ts';
import { notDivisible } from './not-divisible.ts';
import { notEnoughCards } from './not-enough-cards.ts';
import { notOneCard } from './not-one-card.ts';
import { noteNotUnderstood } from './note-not-understood.ts';
import { noteTooLong } from './note-too-long.ts';
import { noteTooManyLines } from './note-too-many-lines.ts';
import { nothingToFoldOnto } from './nothing-to-fold-onto.ts';
import { numberBelowNothing } from './number-below-nothing.ts';
import { numberNotLiteral } from './number-not-literal.ts';
import { numberNotNamed } from './number-not-named.ts';
import { numberTooLarge } from './number-too-large.ts';
import { oneBranch } from './one-branch.ts';
import { oneOfEachSize } from './one-of-each-size.ts';
import { otherwiseAlone } from './otherwise-alone.ts';
import { ownSecret } from './own-secret.ts';
import { patterNotKept } from './patter-not-kept.ts';
import { pileTwice } from './pile-twice.ts';
import { readTwoWays } from './read-two-ways.ts';
import { readingStopped } from './reading-stopped.ts';
import { reading } from './reading.ts';
import { restrictionUnsaid } from './restriction-unsaid.ts';
import { rowsDoNotFit } from './rows-do-not-fit.ts';
import { rowsNotStated } from './rows-not-stated.ts';
import { ruleNeverEnds } from './rule-never-ends.ts';
import { sameCardTwice } from './same-card-twice.ts';
import { secretAndOpen } from './secret-and-open.ts';
import { sectionNear } from './section-near.ts';
import { sectionTwice } from './section-twice.ts';
import { sentenceEndsEarly } from './sentence-ends-early.ts';
import { sentenceNotUnderstood } from './sentence-not-understood.ts';
import { sentenceTooLong } from './sentence-too-long.ts';
import { setUpAll } from './set-up-all.ts';
import { setUpAlternately } from './set-up-alternately.ts';
import { setUpAny } from './set-up-any.ts';
import { setUpAttributeEmpty } from './set-up-attribute-empty.ts';
import { setUpAttributeName } from './set-up-attribute-name.ts';
import { setUpAttributeOf } from './set-up-attribute-of.ts';
import { setUpAttributeTwice } from './set-up-attribute-twice.ts';
import { setUpAttributeValue } from './set-up-attribute-value.ts';
import { setUpCard } from './set-up-card.ts';
import { setUpCountOfWhat } from './set-up-count-of-what.ts';
import { setUpCountZero } from './set-up-count-zero.ts';
import { setUpCountsDisagree } from './set-up-counts-disagree.ts';
import { setUpEachOne } from './set-up-each-one.ts';
import { setUpEach } from './set-up-each.ts';
import { setUpEmpty } from './set-up-empty.ts';
import { setUpEnds } from './set-up-ends.ts';
import { setUpFacesInOrder } from './set-up-faces-in-order.ts';
import { setUpHandEmpty } from './set-up-hand-empty.ts';
import { setUpJoint } from './set-up-joint.ts';
import { setUpKindCount } from './set-up-kind-count.ts';
import { setUpKindsClash } from './set-up-kinds-clash.ts';
import { setUpLineLong } from './set-up-line-long.ts';
import { setUpManyAttributes } from './set-up-many-attributes.ts';
import { setUpManyPiles } from './set-up-many-piles.ts';
import { setUpMatesOrder } from './set-up-mates-order.ts';
import { setUpMoreThanAPack } from './set-up-more-than-a-pack.ts';
import { setUpNoPile } from './set-up-no-pile.ts';
import { setUpNoRest } from './set-up-no-rest.ts';
import { setUpNoSuchCard } from './set-up-no-such-card.ts';
import { setUpNoneFor } from './set-up-none-for.ts';
import { setUpNoneForAll } from './set-up-none-for-all.ts';
import { setUpNotEquations } from './set-up-not-equations.ts';
import { setUpNotFound } from './set-up-not-found.ts';
import { setUpNotThere } from './set-up-not-there.ts';
import { setUpNothing } from './set-up-nothing.ts';
import { setUpOpenQuote } from './set-up-open-quote.ts';
import { setUpOrderNotSaid } from './set-up-order-not-said.ts';
import { setUpOrderSize } from './set-up-order-size.ts';
import { setUpOrderTaken } from './set-up-order-taken.ts';
import { setUpOtherNumber } from './set-up-other-number.ts';
import { setUpOwnName } from './set-up-own-name.ts';
import { setUpPackAttribute } from './set-up-pack-attribute.ts';
import { setUpPatternCount } from './set-up-pattern-count.ts';
import { setUpPatternCut } from './set-up-pattern-cut.ts';
import { setUpPatternShort } from './set-up-pattern-short.ts';
import { setUpPileName } from './set-up-pile-name.ts';
import { setUpPileTwice } from './set-up-pile-twice.ts';
import { setUpQuote } from './set-up-quote.ts';
import { setUpRangeSuits } from './set-up-range-suits.ts';
import { setUpReach } from './set-up-reach.ts';
import { setUpSaidTwice } from './set-up-said-twice.ts';
import { setUpSign } from './set-up-sign.ts';
import { setUpSuit } from './set-up-suit.ts';
import { setUpTakenAsAttribute } from './set-up-taken-as-attribute.ts';
import { setUpTooFew } from './set-up-too-few.ts';
import { setUpTooMany } from './set-up-too-many.ts';
import { setUpValueNumber } from './set-up-value-number.ts';
import { setUpWord } from './set-up-word.ts';
import { sizesNamedCards } from './sizes-named-cards.ts';
import { sizesOne } from './sizes-one.ts';
import { skipsDoNotReach } from './skips-do-not-reach.ts';
import { smtJudged } from './smt-judged.ts';
import { slipsNothingProved } from './slips-nothing-proved.ts';
import { smtLarge } from './smt-large.ts';
import { smtLooks } from './smt-looks.ts';
import { stepEmpty } from './step-empty.ts';
import { stepsAreBullets } from './steps-are-bullets.ts';
import { stepsWithoutBlock } from './steps-without-block.ts';
import { straySign } from './stray-sign.ts';
import { testOfLiteral } from './test-of-literal.ts';
import { tooDeepInLists } from './too-deep-in-lists.ts';
import { tooDeep } from './too-deep.ts';
import { tooManyCells } from './too-many-cells.ts';
import { tooManyEndings } from './too-many-endings.ts';
import { tooManyMarks } from './too-many-marks.ts';
import { tooManyNumbers } from './too-many-numbers.ts';
import { tooManyPiles } from './too-many-piles.ts';
import { tooManySteps } from './too-many-steps.ts';
import { tooManyToWeave } from './too-many-to-weave.ts';
import { unknownAttribute } from './unknown-attribute.ts';
import { unknownCard } from './unknown-card.ts';
import { unknownMark } from './unknown-mark.ts';
import { unknownPile } from './unknown-pile.ts';
import { usesSecret } from './uses-secret.ts';
import { whichNumber } from './which-number.ts';
import { whichPile } from './which-pile.ts';
import { whichTwoPiles } from './which-two-piles.ts';
import { whoRepeats } from './who-repeats.ts';
import { wordTwice } from './word-twice.ts';
import { wrongNumber } from './wrong-number.ts';

/** Every message there is; a new one is its own file and one line here. */
export const MESSAGES: readonly Message[] = [
  aboutNothing,
  andMore,
  blockNotUnderstood,
  blockWithoutSteps,
  blocksOfNone,
  branchesAreSteps,
  budgetGraph,
  budgetRule,
  budgetTables,
  budgetTrials,
  bulletsNotRead,
  certificateBudget,
  certificateClaim,
  certificateColumns,
  certificateEdge,
  certificateHash,
  certificateJson,
  certificateMissing,
  certificateNoForm,
  certificateNotProved,
  certificateNote,
  certificateRuleEndless,
  certificateRule,
  certificateRulesDiffer,
  certificateSentences,
  certificateSet,
  certificateShape,
  certificateStart,
  certificateStuck,
  chanceEndless,
  chanceEstimate,
  chanceNested,
  chanceNumber,
  chancePerformer,
  chanceTooSmall,
  choicesLeft,
  countEndsInTail,
  countFromNone,
  cutTooDeep,
  duplicateCard,
  eachInEach,
  freedomManyRounds,
  freedomMixTooLarge,
  freedomNothingProved,
  freedomSomeUnsettled,
  freedomTablesSpent,
  headKey,
  headNotKeys,
  headTooDeep,
  headTooLong,
  headUnclosed,
  headUnreadable,
  headValue,
  inNoPile,
  itUnclear,
  leftOver,
  lineEmpty,
  looksUnseen,
  markNotPut,
  mishapEmpty,
  mishapNames,
  nameIsANumber,
  nameIsAWord,
  nameTaken,
  needsSecret,
  neverEnds,
  neverWhen,
  noChoiceFits,
  noCommonRule,
  noDeeperCut,
  noEndingLines,
  noLayout,
  noLetters,
  noMiddlePile,
  noNumberBetween,
  noNumberNamed,
  noNumberedPiles,
  noPiles,
  noPlaceForIt,
  noRows,
  noSetUpLines,
  noSetUp,
  noStartingOrder,
  noSteps,
  noSuchCard,
  noSuchChoice,
  noSuchHour,
  noSuchPile,
  noSuchPlace,
  noTimes,
  noWorking,
  notAKey,
  notANumber,
  notAnOrder,
  notDivisible,
  notEnoughCards,
  notOneCard,
  noteNotUnderstood,
  noteTooLong,
  noteTooManyLines,
  nothingToFoldOnto,
  numberBelowNothing,
  numberNotLiteral,
  numberNotNamed,
  numberTooLarge,
  oneBranch,
  oneOfEachSize,
  otherwiseAlone,
  ownSecret,
  patterNotKept,
  pileTwice,
  readTwoWays,
  readingStopped,
  reading,
  restrictionUnsaid,
  rowsDoNotFit,
  rowsNotStated,
  ruleNeverEnds,
  sameCardTwice,
  secretAndOpen,
  sectionNear,
  sectionTwice,
  sentenceEndsEarly,
  sentenceNotUnderstood,
  sentenceTooLong,
  setUpAll,
  setUpAlternately,
  setUpAny,
  setUpAttributeEmpty,
  setUpAttributeName,
  setUpAttributeOf,
  setUpAttributeTwice,
  setUpAttributeValue,
  setUpCard,
  setUpCountOfWhat,
  setUpCountZero,
  setUpCountsDisagree,
  setUpEachOne,
  setUpEach,
  setUpEmpty,
  setUpEnds,
  setUpFacesInOrder,
  setUpHandEmpty,
  setUpJoint,
  setUpKindCount,
  setUpKindsClash,
  setUpLineLong,
  setUpManyAttributes,
  setUpManyPiles,
  setUpMatesOrder,
  setUpMoreThanAPack,
  setUpNoPile,
  setUpNoRest,
  setUpNoSuchCard,
  setUpNoneFor,
  setUpNoneForAll,
  setUpNotEquations,
  setUpNotFound,
  setUpNotThere,
  setUpNothing,
  setUpOpenQuote,
  setUpOrderNotSaid,
  setUpOrderSize,
  setUpOrderTaken,
  setUpOtherNumber,
  setUpOwnName,
  setUpPackAttribute,
  setUpPatternCount,
  setUpPatternCut,
  setUpPatternShort,
  setUpPileName,
  setUpPileTwice,
  setUpQuote,
  setUpRangeSuits,
  setUpReach,
  setUpSaidTwice,
  setUpSign,
  setUpSuit,
  setUpTakenAsAttribute,
  setUpTooFew,
  setUpTooMany,
  setUpValueNumber,
  setUpWord,
  sizesNamedCards,
  sizesOne,
  skipsDoNotReach,
  smtJudged,
  slipsNothingProved,
  smtLarge,
  smtLooks,
  stepEmpty,
  stepsAreBullets,
  stepsWithoutBlock,
  straySign,
  testOfLiteral,
  tooDeepInLists,
  tooDeep,
  tooManyCells,
  tooManyEndings,
  tooManyMarks,
  tooManyNumbers,
  tooManyPiles,
  tooManySteps,
  tooManyToWeave,
  unknownAttribute,
  unknownCard,
  unknownMark,
  unknownPile,
  usesSecret,
  whichNumber,
  whichPile,
  whichTwoPiles,
  whoRepeats,
  wordTwice,
  wrongNumber,
];
