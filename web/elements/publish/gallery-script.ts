/**
 * What a screen in a gallery does: one cloth at a time, large targets, back to the start after a while, no way out.
 *
 * It is written into the published page as it stands, so it uses nothing from outside itself.
 */
export function galleryScript(): void {
  const root = document.documentElement;
  const start = document.getElementById('start');
  const back = document.getElementById('back');
  const sections = [...document.querySelectorAll<HTMLElement>('section.colour')];
  const tongues = [...document.querySelectorAll<HTMLButtonElement>('button[data-lang]')];
  const idleSeconds = Number(root.dataset['idle'] ?? '90');
  const first = root.lang;
  let idle = 0;

  const show = (key: string): void => {
    const section = sections.find((one) => one.id === key);
    for (const one of sections) one.hidden = one !== section;
    if (start) start.hidden = section !== undefined;
    if (back) back.hidden = section === undefined;
    root.scrollTop = 0;
    const heading = section?.querySelector<HTMLElement>('h2') ?? document.querySelector<HTMLElement>('h1');
    heading?.focus({ preventScroll: true });
  };
  const speak = (lang: string): void => {
    for (const button of tongues) button.setAttribute('aria-pressed', String(button.dataset['lang'] === lang));
    for (const section of sections) {
      const captions = [...section.querySelectorAll<HTMLElement>('.caption')];
      const spoken = captions.some((one) => one.lang === lang) ? lang : captions[0]?.lang;
      for (const one of captions) one.hidden = one.lang !== spoken;
    }
  };
  const again = (): void => {
    for (const one of document.querySelectorAll('details')) one.open = false;
    speak(first);
    show('');
  };
  const awake = (): void => {
    clearTimeout(idle);
    idle = window.setTimeout(again, idleSeconds * 1000);
  };

  root.classList.add('gallery');
  document.addEventListener('click', (event) => {
    const target = event.target instanceof Element ? event.target : undefined;
    const link = target?.closest('a');
    if (link) {
      event.preventDefault();
      const href = link.getAttribute('href') ?? '';
      if (href.startsWith('#')) show(href.slice(1));
    }
    const lang = target?.closest<HTMLElement>('button[data-lang]')?.dataset['lang'];
    if (lang !== undefined) speak(lang);
    if (target?.closest('#back')) show('');
  });
  for (const stopped of ['contextmenu', 'dragstart', 'submit']) document.addEventListener(stopped, (event) => event.preventDefault());
  for (const sign of ['pointerdown', 'keydown', 'scroll', 'touchstart']) document.addEventListener(sign, awake, { passive: true });
  again();
  awake();
}
