package gloam.cli;

import java.util.Optional;

/** Whoever sits before the program and answers its questions. */
@FunctionalInterface
interface Terminal {

    /** The answer to a question, a line of text; empty where the input has ended. */
    Optional<String> answer(String question);
}
