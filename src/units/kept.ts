/**
 * What is made of an object, made once and handed out again as long as the object lives. For objects that do not change
 * once they are made.
 */
export function kept<K extends object, V>(make: (from: K) => V): (from: K) => V {
  const made = new WeakMap<K, { value: V }>();
  return (from) => {
    const known = made.get(from);
    if (known) return known.value;
    const value = make(from);
    made.set(from, { value });
    return value;
  };
}
