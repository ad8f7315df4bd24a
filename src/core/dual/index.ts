export {
  add,
  arcTangent2,
  chain,
  constant,
  type Dual,
  divide,
  hypotenuse,
  larger,
  multiply,
  negate,
  scale,
  shift,
  smaller,
  subtract,
} from './dual';
export { fixedPoint, fixedValue, impliedPoint } from './fixedPoint';
