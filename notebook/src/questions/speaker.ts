const byWhom = 'tarebook.speaker';
const mostOfName = 60;

/** Who answers here, as it was last written. */
export function speakerNow(): string {
  try {
    return localStorage.getItem(byWhom) ?? '';
  } catch {
    return '';
  }
}

/** @throws where this device keeps nothing */
export function keepSpeaker(name: string): void {
  localStorage.setItem(byWhom, name.trim().slice(0, mostOfName));
}
