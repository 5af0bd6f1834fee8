import { useGarden } from '../../app/garden-context.tsx';

export default function Garden() {
  const { planned } = useGarden();
  return (
    <>
      <h1>{planned.read.garden.name}</h1>
      <ul>
        {planned.places.map((place) => (
          <li key={place.id}>{place.name}</li>
        ))}
      </ul>
    </>
  );
}
