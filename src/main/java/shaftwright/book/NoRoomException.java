package shaftwright.book;

/** A workbook has no place left for something that is to be put into it. */
public final class NoRoomException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public NoRoomException(String message) {
        super(message);
    }
}
