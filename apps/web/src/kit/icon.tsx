/** Line drawings of our own on a 24 by 24 grid; always beside a word. */
const paths = {
  line: 'M3 17h18M5 14v6M12 14v6M19 14v6M8 9.5a3 3 0 1 0 6 0a3 3 0 1 0-6 0M15 9.5h5m-2.5-2.5 2.5 2.5-2.5 2.5',
  test: 'M9 3h6M10 3v6.5L5.6 17.6A2.2 2.2 0 0 0 7.6 21h8.8a2.2 2.2 0 0 0 2-3.4L14 9.5V3M7.5 15h9',
  work: 'M14.5 3v6.5M14.5 9.5c-2.6 0-4 1.6-4 4.5l4 7 4-7c0-2.900-1.400-4.500-4-4.500M12 3h5M3 7l2 2 3.500-3.500M3 14l2 2 3-3',
  cores: 'M4 6h16v14H4zM8 10.500v3M12 14v3M16 10.500v3M8 6V3.500M12 6V3.500M16 6V3.500',
  print:
    'M7 9V3.500h10V9M7 17H4.500A1.500 1.500 0 0 1 3 15.500V10.500A1.500 1.500 0 0 1 4.500 9h15a1.500 1.500 0 0 1 1.500 1.500v5a1.500 1.500 0 0 1-1.500 1.500H17M7 14h10v6.500H7z',
  placing: 'M4 4h7v7H4zM13 4h7v7h-7zM4 13h7v7H4zM16.500 20v-4M16.500 16c0-2 1.200-3 3.500-3 0 2-1.200 3-3.500 3Z',
  settings:
    'M4 7h9M17 7h3M4 12h3M11 12h9M4 17h7M15 17h5M13 7a2 2 0 1 0 4 0a2 2 0 1 0-4 0M7 12a2 2 0 1 0 4 0a2 2 0 1 0-4 0M11 17a2 2 0 1 0 4 0a2 2 0 1 0-4 0',
  plus: 'M12 5v14M5 12h14',
  care: 'M12 4 2.800 20h18.400zM12 10v4.500M12 17.200v.3',
  fine: 'M4.500 12.500l5 5L19.500 7',
  look: 'M5 10.500a5.500 5.500 0 1 0 11 0a5.500 5.500 0 1 0-11 0M15 15l5 5',
  leaf: 'M5 19c0-9 5-14 14-14 0 9-5 14-14 14ZM5 19l7-7',
  lock: 'M6 11h12v9H6zM8.500 11V8a3.500 3.500 0 0 1 7 0v3M12 14.500v2.500',
  back: 'M20 12H5M11 6l-6 6 6 6',
  up: 'M12 20V5M6 11l6-6 6 6',
  down: 'M12 4v15M6 13l6 6 6-6',
} as const;

export type IconName = keyof typeof paths;

export function Icon({ name, size = 24 }: { readonly name: IconName; readonly size?: number }) {
  return (
    <svg width={size} height={size} viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path
        d={paths[name]}
        fill="none"
        stroke="currentColor"
        strokeWidth="1.8"
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </svg>
  );
}
