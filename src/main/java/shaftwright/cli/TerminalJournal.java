package shaftwright.cli;

import shaftwright.jobs.Journal;

/** A job's lines go to the terminal as they come, its steps once they take long. */
record TerminalJournal(Terminal terminal, Progress progress) implements Journal {
    @Override
    public void step(String doing) {
        progress.step(doing);
    }

    @Override
    public void say(String line) {
        terminal.out().println(line);
    }

    @Override
    public void complain(String line) {
        terminal.err().println(line);
    }
}
