export { forecastPicture, type PictureOptions } from './forecast-picture.ts';
