import './tare-page';
