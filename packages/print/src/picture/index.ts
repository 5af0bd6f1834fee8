export { forecastPicture, type PictureOptions } from './forecast-picture.ts';
export { type UsablePictureOptions, usablePictureSvg } from './usable-picture.ts';
