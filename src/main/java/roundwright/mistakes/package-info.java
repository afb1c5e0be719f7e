/** The story of a beginner, its exact inversion, learned rates, the next question, advice, who needs help. */
package roundwright.mistakes;
