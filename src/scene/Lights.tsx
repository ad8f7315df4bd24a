/** Even light from the ceiling and two soft lamps in the room; nothing is fetched. */
export function Lights() {
  return (
    <>
      <hemisphereLight args={['#ffffff', '#8d867a', 1.25]} />
      <directionalLight position={[1400, 2200, 2600]} intensity={1.35} />
      <directionalLight position={[-2200, 900, 1800]} intensity={0.55} />
    </>
  );
}
