/** What the `materials` room says, one template a code. `{name}` stands for a parameter of the message. */
export const materials = {
  // Cautions that travel with a material. Each code is a row of the table `cautions`.
  'materials.caution-label': 'The label and your local rules come first. Where they say less, use less.',
  'materials.caution-dust':
    'Do not breathe the dust: it may hold silica. Choose a calm day, wear a dust mask and stay upwind.',
  'materials.caution-eyes':
    'Wear gloves and eye protection. If it gets in an eye, rinse with water for several minutes.',
  'materials.caution-caustic':
    'Burns skin, eyes and lungs, worst when wet. Brush dry powder off before you rinse. Never with groups or children.',
  'materials.caution-ash-lye': 'Ash turns to strong lye when it gets wet. Keep it dry and off your skin and eyes.',
  'materials.caution-ash-cold':
    'Hot embers hide in ash. Keep it in a metal bin with a lid, outdoors, until it is cold: two days or more.',
  'materials.caution-ash-salts': 'Ash is salty. Keep it off seeds and young plants, and mix it in before you plant.',
  'materials.caution-sulfur-fire':
    'Sulfur burns, and its dust can explode. No flame, spark or smoking. Store it away from nitrates and bleach.',
  'materials.caution-sulfur-lungs': 'Sulfur dust stings eyes, skin and lungs. People with asthma should not spread it.',
  'materials.caution-livestock': 'Farm animals must not eat sulfur. Keep it away from their feed and grazing.',
  'materials.caution-no-lime': 'Do not use it in the same season as lime or wood ash on the same bed: they cancel out.',
  'materials.caution-water':
    'Keep well away from ponds, streams and drains: at least 3 to 10 m, or what your local rule says. Not before heavy rain.',
  'materials.caution-children': 'Keep children and pets off until it is watered in and dry again, at least a day.',
  'materials.caution-ammonia':
    'Never mix lime or ash with manure, urea or ammonium fertilizer: ammonia gas escapes. Leave two months between them.',
  'materials.caution-stains': 'Iron salts stain paving, walls and clothes. Sweep up spills dry.',
  'materials.caution-aluminium-roots':
    'Below about pH 5.5 the aluminum harms roots. It is also poisonous to fish. Use it only to turn hydrangeas blue.',
  'materials.caution-salts': 'Strong salts can burn roots and leaves. Spread evenly, keep off leaves and water in.',
  'materials.caution-magnesium':
    'This lime brings a lot of magnesium. Use it where a soil test shows that magnesium is short.',
  'materials.caution-analysis': 'This is a by-product and every load differs. Ask for an analysis before you use it.',
  'materials.caution-metals':
    'It may carry lead or other metals. Ask for an analysis. Your agriculture office can advise.',
  'materials.caution-acid':
    'Strong acids are for trained growers with goggles, gloves and apron. Always add acid to water, never water to acid.',
  'materials.caution-raw-manure':
    'Raw manure can carry germs. Wait 120 days before you harvest food that touches soil, and 90 days for other food.',
  'materials.caution-lawn-water-in': 'On a lawn, spread it in cool weather and water it in at once.',
  'materials.caution-lawn-heat': 'Never spread sulfur on a lawn in hot weather.',
  'materials.caution-weather': 'Not on frozen, waterlogged or very dry ground, and not before a storm.',
  'materials.caution-retest-wait': 'Wait at least three months before the next soil test.',

  // Refusals: why not, and what to do instead.
  'materials.refuse-caustic-lime':
    '{product} is caustic and can burn skin, eyes and lungs. Use ground or pelletized limestone instead: slower, and safe to handle.',
  'materials.refuse-dirty-ash':
    'Never spread ash of treated, painted or stained wood, of rubbish or of coal: it holds metals. Use only ash of clean, plain wood, or ground limestone. Ask your waste authority where the rest may go.',
  'materials.refuse-coarse-eggshell':
    'Broken eggshells hardly dissolve in a season. Grind them to flour, or compost them, and use ground limestone to change the pH.',
  'materials.refuse-whole-pastilles':
    'Hard sulfur pastilles that stay whole take many years to work. Use sulfur powder, or granules that fall apart when wet.',
  'materials.refuse-strong-acid':
    'Strong acids are not for gardens. Use sulfur in the ground. For water use rain, or a little citric acid.',
  'materials.refuse-sodium': '{product} brings sodium, which harms soil and roots. Use ground limestone instead.',
  'materials.refuse-gypsum':
    'Gypsum does not change pH. It adds calcium and sulfur. To raise the pH use limestone; to lower it use sulfur.',
  'materials.refuse-neutral-salt':
    '{product} does not change pH. It is only a feed. To raise the pH use limestone; to lower it use sulfur.',
  'materials.refuse-peat':
    'Peat lowers pH only when it is a large share of a mix, and we cannot work out a dose. Use sulfur in the ground, or fill a pot with an acid mix.',
  'materials.refuse-pine-needles':
    'Pine needles do not make soil sour. They are a fine mulch. To lower the pH use sulfur.',
  'materials.refuse-coffee':
    'Coffee grounds do not lower pH in a way we can count on, and raw ones can harm seedlings. Compost them, and use sulfur to lower the pH.',
  'materials.refuse-vinegar':
    '{product} has no lasting effect in soil: microbes use it up and the lime comes back. To lower the pH use sulfur.',
  'materials.refuse-needs-analysis':
    'No two loads of {product} are alike, so we give no dose without its own analysis. Ask for one, or use ground limestone.',
  'materials.refuse-not-organic':
    'Organic certifiers usually do not allow {product} (from memory), so it is left out of this plan. Use limestone to raise pH, sulfur to lower it. Your own certifier decides.',
  'materials.refuse-ask-certifier':
    'Not every organic certifier allows {product} (from memory), so it is left out of this plan. Ask yours before you use it.',
  'materials.refuse-no-effect':
    '{product} does not change pH in a way we can count on. Use limestone to raise it, sulfur to lower it.',
  'materials.refuse-lime-not-needed':
    'The pH is {ph} and the aim is {target}: {product} would take it too high. Leave it alone and test again later.',
  'materials.refuse-lime-neutral': 'The pH is {ph}. At 7 or above no lime or ash is needed. Leave it alone.',
  'materials.refuse-ash-acid-plants':
    'Ash is too quick and too strong for blueberries, azaleas, rhododendrons and other acid-loving plants. If they truly need it, use a little ground limestone.',
  'materials.refuse-ash-potato':
    'Ash in potato ground helps scab. Leave the pH as it is, or use ground limestone in another year.',
  'materials.refuse-acid-not-needed':
    'The pH is {ph} and the aim is {target}: {product} would take it too low. Leave it alone and test again later.',
  'materials.refuse-limy-soil':
    'This soil holds free lime. The lime eats up the acid before the pH can move. Grow plants that like lime, or use a pot or a raised bed with an acid mix.',
  'materials.refuse-test-lime-first':
    'Above about pH 7.2 the soil may hold free lime, and then {product} does nothing. Drop vinegar on dry soil and look for fizz first.',
  'materials.refuse-lead':
    'This soil has raised lead, and a lower pH lets plants take up more of it. Do not acidify it. Use a clean raised bed or pots, and ask your health department.',
  'materials.refuse-aluminium':
    'Aluminum sulfate can poison roots. Use it only to turn hydrangeas blue. Use sulfur to lower the pH.',
  'materials.refuse-planted-pot':
    '{product} will burn plants that already grow in the pot. Water with rain or an ammonium feed, or repot in a better mix.',
  'materials.refuse-granules-pot':
    'Sulfur granules work unevenly in a pot. Use a little sulfur powder, or treat the water first.',

  // What the figures do not say yet.
  'materials.ask-iron-hydrate':
    'Which iron sulfate is it? We took the stronger kind, with about 30 % iron. If the label says about 20 % iron you need 64 % more. Enter the % iron.',
  'materials.ask-aluminium-hydrate':
    'Which aluminum sulfate is it? We took the kind with about 9 % aluminum (14-hydrate). Enter the % aluminum from the label.',
  'materials.ask-fineness':
    'How fine is {product}? We took {efficiency} as working. Enter the sieve figures from the label.',
  'materials.ask-analysis': 'Ask the seller for the neutralising value and the metals in {product}.',
  'materials.ask-moisture': 'We took {moisture} water in {product}. Weigh a sample before and after drying to be sure.',
  'materials.fineness-sum': 'The size classes add up to {total}, not 100 %. They were used as printed.',
  'materials.fineness-beyond-screens':
    'The label tests no screen as fine as the rule needs. All that passes its finest screen was counted as fine.',

  // Water.
  'materials.alkalinity-low': 'The water is very soft. In {pot} the mix may slowly turn sour: test it now and then.',
  'materials.alkalinity-fine': 'The alkalinity of the water suits {pot}.',
  'materials.alkalinity-watch':
    'The alkalinity is on the high side for {pot}: the mix will slowly turn limy. Test it often.',
  'materials.alkalinity-act':
    'The alkalinity is too high for {pot}. Mix it with rainwater, use an ammonium feed, or ask a trained grower about acid.',
} as const;
