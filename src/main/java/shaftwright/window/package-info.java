/**
 * The window for those who would rather not type commands: workbooks are dropped on it, verdicts
 * shown, jobs started by buttons. Nothing is computed or decided here; {@code jobs} does the work
 * and finds the words. Swing with FlatLaf's look.
 */
package shaftwright.window;
