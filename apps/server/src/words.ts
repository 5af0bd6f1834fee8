/** Everything the server says of its own; sentences about soil come from the almanac's catalogue. */

/** Kinds of refusal: status and title. Served at /api/problems. */
export const problemKinds = {
  'bad-entry': { status: 422, title: 'An entry could not be used' },
  'not-json': { status: 400, title: 'The request is not good JSON' },
  'wrong-type': { status: 415, title: 'This kind of content is not taken here' },
  'too-large': { status: 413, title: 'The request is too large' },
  'not-found': { status: 404, title: 'There is nothing here' },
  'not-allowed': { status: 405, title: 'This cannot be done here' },
  conflict: { status: 409, title: 'Something else stands there already' },
  'wrong-host': { status: 421, title: 'This address is not answered' },
  'other-site': { status: 403, title: 'Another web site may not do this' },
  'no-database': { status: 503, title: 'The record cannot be reached' },
  broken: { status: 500, title: 'The server failed' },
} as const;

export const words = {
  notFound: (path: string) => `There is nothing at ${path}. See /api/openapi.json for what there is.`,
  noGarden: (id: string) => `There is no garden with the id "${id}".`,
  noPlant: (name: string) => `There is no plant called "${name}" in the almanac.`,
  noPlace: (id: string) => `There is no place with the id "${id}" in this garden.`,
  noThing: (id: string) => `Nothing with the id "${id}" was ever in this garden.`,
  noCalendar: 'There is no calendar at this address. Ask for a new one in the garden.',
  noPhoto: (id: string) => `There is no photo named "${id}".`,
  notAllowed: (method: string, allowed: string) => `${method} is not done here. Use ${allowed}.`,
  badRequest: 'Some of what was sent could not be used. Nothing was changed.',
  wantsJson: (given: string) => `Send application/json here, not ${given}.`,
  wantsImage: (given: string) => `Send a photo as image/jpeg, image/png, image/webp or image/avif, not ${given}.`,
  tooLarge: (limit: string) => `At most ${limit} can be sent at once here. Send it in smaller pieces.`,
  wrongHost: 'This server answers only to its own address. Name further ones in SORREL_HOSTS.',
  otherSite: 'A page of another web site sent this. Open Sorrel itself.',
  stopping: 'The server is stopping. Try again in a moment.',
  noDatabase: 'The record of gardens cannot be reached just now. What you entered was not kept. Try again.',
  notAnImage: 'This file could not be read as a photo.',
  imageFix: 'Take or save the photo as a JPEG, at most 50 million dots.',
  noWeb: 'The pages are not built yet. Run npm start. The API is described at /api/openapi.json.',
  listening: (address: string) => `Sorrel is at ${address}`,
  openToAll: (host: string) =>
    `HOST is ${host}: everyone who reaches this computer can read and change all gardens. Use this on a network you trust.`,
  portTaken: (port: number) => `Port ${port} is taken by another program. Choose another PORT, or leave PORT out.`,
  noFreePort: (from: number, to: number) => `Every port from ${from} to ${to} is taken. Choose a free one with PORT.`,
  badAddress: (text: string) => `SORREL_ADDRESS is an address such as https://garden.example, not "${text}".`,
  badPort: (text: string) => `PORT is a number from 0 to 65535, not "${text}".`,
  otherGarden: 'This entry belongs to another garden than the address it was sent to.',
  otherGardenFix: (garden: string) => `Send it to its own garden, or write ${garden} into it.`,
} as const;
