/** What a pointer drag does: called with the pointer's place in pixels from an element's left edge. */
export interface DragSteps {
  readonly move: (x: number) => void;
  readonly end: (x: number, moved: boolean) => void;
}

/** Farther than this the pointer has been dragged, nearer it has only been pressed; in pixels. */
const SLACK = 4;

/** Follows a pointer from its press to its release, wherever it goes in between. */
export function followPointer(event: PointerEvent, over: Element, { move, end }: DragSteps): void {
  const target = event.currentTarget;
  if (!(target instanceof Element) || event.button !== 0) return;
  event.preventDefault();
  target.setPointerCapture(event.pointerId);
  const at = ({ clientX }: PointerEvent): number => clientX - over.getBoundingClientRect().left;
  const start = at(event);
  let moved = false;
  const done = new AbortController();
  const { signal } = done;
  const follow = (next: Event): void => {
    if (!(next instanceof PointerEvent)) return;
    moved ||= Math.abs(at(next) - start) > SLACK;
    if (moved) move(at(next));
  };
  const release = (last: Event): void => {
    done.abort();
    if (last instanceof PointerEvent && last.type === 'pointerup') end(at(last), moved);
    else end(start, false);
  };
  target.addEventListener('pointermove', follow, { signal });
  target.addEventListener('pointerup', release, { signal });
  target.addEventListener('pointercancel', release, { signal });
}
