type Graph = ReadonlyMap<string, readonly string[]>;

/** All that can be reached from a node by one step or more. */
function reachable(graph: Graph, from: string): Set<string> {
  const found = new Set<string>();
  const open = [...(graph.get(from) ?? [])];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    if (found.has(next)) continue;
    found.add(next);
    open.push(...(graph.get(next) ?? []));
  }
  return found;
}

/** Groups of nodes that reach one another, each sorted; a node that reaches itself alone is a group of one. */
export function circles(graph: Graph): string[][] {
  const reach = new Map([...graph.keys()].map((node) => [node, reachable(graph, node)]));
  const groups = [...graph.keys()]
    .filter((node) => reach.get(node)!.has(node))
    .map((node) => [...reach.get(node)!].filter((other) => reach.get(other)?.has(node)).sort());
  return [...new Map(groups.map((group) => [group.join(), group])).values()];
}
