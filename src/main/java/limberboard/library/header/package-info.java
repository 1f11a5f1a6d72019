/**
 * From YAML to records: {@link limberboard.library.header.YamlTree} composes nodes with line
 * numbers, {@link limberboard.library.header.HeaderBinder} binds them, and every mistake becomes a
 * problem with its line.
 *
 * <p>To use it: cut a page's header off with {@link limberboard.library.header.HeaderText}, and
 * bind it; a file that is all YAML, such as a boat, is bound as it is:
 *
 * <pre>{@code
 * import limberboard.library.header.HeaderBinder;
 * import limberboard.library.value.Condition;
 *
 * var text = "fitted: mast-carbon\nwater: frsh\n";
 * var bound = new HeaderBinder().read("conditions.yaml", text, Condition.class);
 * var problem = bound.problems().get(0);
 * assert problem.line() == 2 && problem.wrong().contains("did you mean \"fresh\"?") : problem;
 * }</pre>
 *
 * <p><b>Choices made.</b> Composed first and bound second, see {@code
 * docs/decisions/0001-headers.md}. The records say what is required and within what limits; the
 * binder knows none of them.
 *
 * <p><b>Threads.</b> A binder may be used by many threads, a tree by one.
 */
package limberboard.library.header;
