/** Distance between nails that stand above one another in an end. [in] Common practice, no source. */
export const nailsApartIn = 1;
