export { escapeXml } from './escapeXml';
export { type SvgOptions, svgText } from './svgText';
