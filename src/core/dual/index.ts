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
  squareRoot,
  subtract,
} from './dual';
export { fixedPoint } from './fixedPoint';
