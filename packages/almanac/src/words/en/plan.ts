/** What the `plan` room says, one template a code. `{name}` stands for a parameter of the message. */
export const plan = {
  'plan.no-ph': 'There is no pH reading for this place yet. Take a soil test first.',
  'plan.in-range': 'The pH is {ph}. That is inside the range wanted here, {low} to {high}. Leave the soil alone.',
  'plan.within-error':
    'The pH is {ph}. That is so close to the range wanted here ({low} to {high}) that the test cannot tell the difference. Leave it alone and test again.',
  'plan.conflict': '{a} and {b} want different ground. No pH suits both.',
  'plan.conflict-split': 'Grow them in different places. Changing the soil for one spoils it for the other.',
  'plan.extreme-low':
    'A pH of {ph} is very unusual. Have the test repeated and ask a soil professional before you spread anything.',
  'plan.home-reading-sour': 'The home reading says pH {ph}, more sour than the {low} to {high} wanted here.',
  'plan.home-reading-limy': 'The home reading says pH {ph}, above the {low} to {high} wanted here.',
  'plan.home-no-dose': 'A home reading shows which bed to test. It is not exact enough to work out a dose.',
  'plan.sour-no-rate': 'The soil is too sour: pH {ph}, and {low} to {high} is wanted here.',
  'plan.limy-no-rate': 'The pH is too high: {ph}, and {low} to {high} is wanted here.',
  'plan.ph-alone': 'A pH alone does not say how much is needed. A heavy soil can need four times as much as a sand.',
  'plan.raise': 'The soil is too sour: pH {ph}, and {low} to {high} is wanted here. Raise it to about {aim}.',
  'plan.lower': 'The pH is too high: {ph}, and {low} to {high} is wanted here. Lower it slowly to about {aim}.',
  'plan.acid-lovers-in-pots':
    'Acid-loving plants cannot live in this ground. Grow them in pots of acid mix, or in a raised bed on a barrier.',
  'plan.live-with-it': 'Choose plants that like it as it is. Do not add lime or ash.',
  'plan.lead-blocks-acid':
    'The pH is {ph}. This soil holds raised lead, and souring it would set more of the lead free. Do not lower the pH.',
  'plan.sodium':
    'A pH of {ph} is above what lime alone can cause. Sodium is likely, and that needs another treatment. Ask for a sodium test.',
  'plan.tolerated-limy':
    'The pH is {ph}, a little above the {low} to {high} that is best. These plants put up with it. Leave the soil alone, and add no lime or ash.',
  'plan.free-lime':
    'The pH is {ph} and there is free lime in the soil. Sulfur would be used up by the lime long before the pH fell. This soil cannot in practice be made more sour.',
  'plan.fizz-first':
    'The pH is {ph}. Before any sulfur, find out if there is free lime: put a few drops of vinegar on dry soil and watch for fizz.',
  'plan.too-many-dressings': 'It would take about {count} dressings at the largest safe rate. That is not practical.',
  'plan.no-limit-published': 'Nobody has published a safe amount for this here, so none is offered.',
  'plan.too-unsure': 'What is known is too unsure for a safe dose. A better test comes first.',
  'plan.step-cap': 'The whole amount is more than may be given at once, so it goes on in steps with a retest between.',
  'plan.step-risk':
    'The first step is smaller than the whole need, because nobody knows yet just how this soil answers. Retest, then decide on the rest.',
  'plan.step-after-retest':
    'Material was spread on {date}, and no test has seen it yet. Spread nothing more before the retest.',
  'plan.step-two-thirds': 'Sulfur works slowly, so give two thirds first. Retest, then decide on the rest.',
  'plan.step-forecast':
    'The first step was made smaller, because the forecast gave too large a chance of going too far.',
  'plan.no-forecast-ph': 'There is no pH reading here, so nothing can be forecast. Take a soil test first.',
  'plan.no-forecast-soil':
    'Nothing tells how much this soil resists a change, so nothing can be forecast. Give a buffer pH, a texture or the organic matter.',
  'plan.no-forecast-outside': 'A figure of this place lies outside what the forecast can follow. Check its entries.',
  'plan.happens-by-itself':
    'The water and the feeds already move the pH that way: without any dose the chance of going too far before the retest is {chance}. Put nothing on, and test again.',
  'plan.alternative-over-maximum': 'More than the largest amount that may be given at once.',
  'plan.alternative-container':
    'A pot or a raised bed on a barrier has its own mix, so the ground need not change. It costs the mix, and it needs watering.',
  'plan.certified-organic':
    'Only materials that organic certifiers usually allow were counted, from memory. Your own certifier decides; ask before you spread.',
  'plan.readings-disagree':
    'The readings of this soil disagree by more than their errors explain. The first step is kept small, and the retest matters more.',
  'plan.product-assumed':
    'Nothing suitable is at hand, so {product} was taken with usual figures. Put in the figures from your own bag before you weigh it out.',
  'plan.magnesium-low':
    'The test shows little magnesium ({magnesium}), so the lime that holds magnesium is the better one.',
  'plan.magnesium-low-no-dolomitic':
    'The test shows little magnesium ({magnesium}). A dolomitic lime would be better than what is at hand.',
  'plan.magnesium-enough': 'The test shows enough magnesium ({magnesium}), so plain lime without magnesium is right.',
  'plan.magnesium-either': 'Magnesium is {magnesium}. Either kind of lime will do.',
  'plan.magnesium-unknown': 'The test does not give magnesium, so either kind of lime will do for now.',
  'plan.how-spread-evenly': 'Weigh it, split it in two, and spread one half along and one half across the bed.',
  'plan.how-dig-in': 'Mix it into the whole depth. Lime or sulfur left on top works only on top.',
  'plan.how-scratch-in': 'Scratch it in lightly between the plants and water. Do not cut the roots.',
  'plan.how-sulfur-wait': 'Soil life has to turn sulfur into acid. That needs warm, moist soil and some months.',
  'plan.how-lawn-lime': 'Spread it on dry grass on a calm day and water it in. It moves down slowly.',
  'plan.how-lawn-sulfur': 'Spread it thinly after spiking the lawn, in cool weather, and water it in.',
  'plan.how-pot-mix': 'Mix it through the whole pot mix when you repot. Do a trial in one small pot first.',
  'plan.retest-lime': 'Test again in the same season, by the same laboratory, before any second step.',
  'plan.retest-sulfur':
    'Test again after three months of warm soil. Take more cores than usual: sulfur works in patches.',
  'plan.retest-routine': 'Routine test, in the same season as the last one.',
  'plan.retest-pot': 'Read the pot again in four weeks.',
  'plan.caution-lead-talk':
    'Lead is {lead}. Keep children from the bare soil, wash hands and crops, and ask your health department. Limits change: check the date.',
  'plan.caution-lead-refer':
    'Lead is {lead}. Do not grow root or leaf crops in this soil. Use a clean raised bed and ask your health department.',
  'plan.caution-refer-extreme': 'A pH this far out has a cause. Ask a soil professional before you act.',
  'plan.ask-soil-test': 'Take 12 cores to 15 cm (6 in), mix them, and send the mix to a soil laboratory.',
  'plan.ask-laboratory': 'Send a mixed sample to a soil laboratory and ask for pH, buffer pH and organic matter.',
  'plan.ask-fizz': 'Do the vinegar test, or ask the laboratory for carbonate.',
  'plan.ask-plants': 'Say what grows here, so that the range fits the plants.',
  'plan.pot-no-test': 'There is no reading of this pot mix. Test it before you change anything.',
  'plan.pot-water':
    'The water adds about {load} of lime to the mix in a year. That is why the pH climbs. Change the water first: rain water, or mix it half and half.',
  'plan.pot-lower-little': 'Keep sulfur in pots very small. More than this has overshot in trials.',
  'plan.pot-compost-lime': 'Compost in the mix raises the pH by itself. Add no lime before a test.',
  'plan.caution-pot-water': 'The water is harder than pots of this size like ({alkalinity}). The pH will climb again.',
  'plan.ask-water': 'Find out the alkalinity of the water. In pots it decides where the pH goes.',
  'plan.plant-memory': 'The pH range of {plant} is from memory. No publication was found to check it against.',
  'plan.plant-sources-differ':
    'Sources disagree about {plant}. {count} of them lie up to {spread} pH units apart, and the middle is used.',
  'plan.plant-limits-assumed':
    'No source says how far {plant} can stand pH outside its best range. One pH unit is assumed.',
} as const;
