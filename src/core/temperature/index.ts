export { degreeMark, type Temperature, temperatureInside, temperatureShown, temperatureText } from './temperature';
