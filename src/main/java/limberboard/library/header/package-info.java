/**
 * From YAML to records: {@link limberboard.library.header.YamlTree} composes nodes with line
 * numbers, {@link limberboard.library.header.HeaderBinder} binds them, and every mistake becomes a
 * problem with its line.
 *
 * <p><b>Choices made.</b> Composed first and bound second, see {@code
 * docs/decisions/0001-headers.md}.
 */
package limberboard.library.header;
