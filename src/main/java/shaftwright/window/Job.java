package shaftwright.window;

import shaftwright.jobs.Journal;

/**
 * Something that takes a while.
 *
 * @param <T> what comes of it
 */
interface Job<T> {
    T run(Journal journal) throws Exception;
}
