/** The catalogue of techniques as data; what a round uses; where each comes first; what each needs. */
package roundwright.technique;
