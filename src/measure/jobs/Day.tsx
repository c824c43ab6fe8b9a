/** The day on which a reading was entered, small beside it; nothing where there is none to print. */
export const Day = ({ day }: { readonly day: string }) =>
  day === '' ? null : <span class="job-day">{day}</span>;
