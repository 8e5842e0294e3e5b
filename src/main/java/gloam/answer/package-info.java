/**
 * One class for each question that can be asked, with its answer: exact instants and angles, numbers with
 * their unit, constants; no words and nothing rounded.
 */
package gloam.answer;
