import axe from 'axe-core';

/** What axe finds wrong in a part of the page, shadow trees included: rule and the elements it names. */
export async function axeFaults(element: Element): Promise<readonly string[]> {
  const { violations } = await axe.run(element, { rules: { region: { enabled: false } } });
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`);
}
