/** The three parts of the United Kingdom that keep bank holidays of their own. */
export const BANK_HOLIDAY_DIVISIONS = ['england-and-wales', 'scotland', 'northern-ireland'] as const;
export type BankHolidayDivision = (typeof BANK_HOLIDAY_DIVISIONS)[number];
