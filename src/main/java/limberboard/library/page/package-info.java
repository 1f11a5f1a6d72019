/**
 * The kinds of page and their records: what every page has ({@link limberboard.library.page.Head}),
 * what its {@link limberboard.library.page.Kind} adds ({@link limberboard.library.page.Details},
 * sealed), and the parts of these.
 *
 * <p><b>Choices made.</b> Records mirror the header: one component for each key. They are read by
 * {@code header} and judged by {@code check}.
 */
package limberboard.library.page;
