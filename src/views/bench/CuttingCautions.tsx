import { Callout } from '../parts';

/** What to mind at the saw, whatever is cut. */
export function CuttingCautions() {
  return (
    <Callout weight="warn">
      <p>
        Cutting throws dust and chips: wear eye, ear and breathing protection, cut outdoors or with extraction, and keep
        saws and leads dry. Have old walls checked for asbestos and lead before they are sanded or opened. Local codes
        come first.
      </p>
    </Callout>
  );
}
