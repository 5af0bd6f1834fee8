/** What the `placing` room says, one template a code. */
export const placing = {
  // the answer as a whole
  'placing.proven': 'No other way of placing these plants moves less soil. This was proved, not guessed.',
  'placing.not-proven': 'The search was stopped early. There may be a way that moves less soil.',
  'placing.saves':
    'The next best way leaves one of these places alone, and moves more soil elsewhere: {currency} more, counted as pure lime.',
  'placing.as-good': 'There is another way that moves no more soil. Take the one you like better.',
  'placing.no-other-way': 'There is no other way: each of the places that are moved must be moved for these plants.',
  'placing.no-move-needed': 'No soil has to be moved.',

  // why there
  'placing.fits': 'The soil is fine for them as it is, at pH {ph}.',
  'placing.raise': 'The soil must go from pH {from} up to {to} at least, for {plants}.',
  'placing.lower': 'The soil must go from pH {from} down to {to} at least, for {plants}.',
  'placing.within-error': 'That step is smaller than the error of the test. Test again before anything is spread.',
  'placing.empty': 'Nothing is placed here.',
  'placing.untested': 'Nobody tested this soil. They are here because you said so.',
  'placing.fresh-pot': 'Fill the pot with a fresh mix of about pH {ph}.',
  'placing.fixed-breaks-rotation':
    'You fixed plants of one family ({family}) here more often than is wise. Let {years} years pass between them.',

  // apart
  'placing.apart-acid-lovers':
    'Keep these apart from the acid-lovers: {plants}. They need at least pH {low}; {sour} want no more than {high}.',
  'placing.apart': 'Keep {a} and {b} apart: {a} wants no more than pH {high}, {b} at least {low}.',
  'placing.no-common-range': '{place}: no pH suits all that must grow here ({plants}).',
  'placing.out-of-reach': '{place}: the soil cannot be brought to a pH that suits all that must grow here ({plants}).',
  'placing.split-group': 'Give these a place of their own, at pH {low} to {high}: {plants}.',
  'placing.split-together': 'If they must stay together, pH {ph} is least bad. {plant} will suffer most.',
  'placing.split-never': 'They cannot stay together: at any pH one of them is beyond what it stands, such as {plant}.',

  // wishes that cannot be met
  'placing.no-place': 'No place suits {plant}.',
  'placing.no-room-where-it-grows': '{area} of {plant} has no place. Only {room} suits it, in: {places}.',
  'placing.rotation-in-the-way':
    '{area} of {plant} has no place, because its family ({family}) must stay away from a place for {years} years. Without that rest all wishes would fit.',
  'placing.ph-in-the-way':
    '{area} of {plant} has no place, because plants that share no pH need the same ground. If pH did not matter all wishes would fit.',
  'placing.no-room': '{area} of {plant} has no place: there is not enough ground for all wishes.',
  'placing.barred-ph': 'The pH rules out: {places}.',
  'placing.barred-light': 'It is too dark in: {places}.',
  'placing.barred-pots': 'You ruled out pots or ground for it: {places}.',
  'placing.barred-untested': 'Nobody has tested: {places}. A soil test may open more room.',
  'placing.try-a-pot': 'A pot or a raised bed with a fresh mix would do for {plant}.',

  // wishes that cannot be read
  'placing.no-such-season': 'There is no season {value}. Seasons planned: {seasons}.',
  'placing.no-such-season.fix': 'Name a season from 1 to {seasons}, or plan more seasons.',
  'placing.no-such-place': 'The garden has no place called "{value}".',
  'placing.no-such-place.fix': 'Use one of these names: {known}.',

  // one plant and one place
  'placing.plant-inside': 'At pH {ph} {plant} is at its best here.',
  'placing.plant-below': 'Today pH {ph}: {plant} stands it, but is at its best from {low} to {high}.',
  'placing.plant-above': 'Today pH {ph}: {plant} stands it, but is at its best from {low} to {high}.',
  'placing.plant-too-sour': 'Today pH {ph}: too sour. {plant} is at its best from {low} to {high}.',
  'placing.plant-too-limy': 'Today pH {ph}: too limy. {plant} is at its best from {low} to {high}.',
  'placing.plant-within-error': 'That is less than the error of the test, so test again before you rely on it.',
  'placing.planned-inside': 'The plan leads to pH {ph}, which suits it.',
  'placing.planned-below': 'The plan leads to pH {ph}, which it stands; at its best it is from {low} to {high}.',
  'placing.planned-above': 'The plan leads to pH {ph}, which it stands; at its best it is from {low} to {high}.',
  'placing.planned-too-sour': 'The plan leads to pH {ph}, which is too sour for it.',
  'placing.planned-too-limy': 'The plan leads to pH {ph}, which is too limy for it.',
  'placing.planned-no-better': 'The plan leads to pH {ph}, which is no better for it.',
  'placing.plant-untested': 'Nobody knows the pH of this place yet. Test it first.',
  'placing.no-pot-range': 'No range for potting mixes is published for {plant}, so its range in the ground stands in.',
  'placing.only-pots-known': 'Only a range for potting mixes is published for {plant}. It tells nothing of the ground.',
  'placing.no-best-known': 'No best pH is published for {plant}, so nothing can be said here.',

  // why a soil is not moved
  'placing.no-test': 'A place without a soil test is not counted on.',
  'placing.home-reading':
    'The pH was read at home. That is not sure enough to move a soil by. A laboratory test may open more room.',
  'placing.extreme': 'The soil is so sour that an expert should look before anything is spread.',
  'placing.lead': 'There is too much lead to make the soil more sour.',
  'placing.sodium': 'The pH is so high that salt is likely. Sulfur is not the cure.',
  'placing.free-lime': 'There is too much free lime to make the soil more sour.',
  'placing.fizz-first': 'Test for free lime before the soil is made more sour.',
  'placing.hard-water': 'The water would sweeten the pots again.',
  'placing.no-rate': 'Too little is known of the soil to say how much it would take.',
  'placing.no-material': 'No material may be used for it here.',
  'placing.no-limit': 'No safe amount is published for it.',
  'placing.too-many-dressings': 'It would take {count} dressings, which is not practical.',
} as const;
